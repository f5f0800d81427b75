package gylebook.simulate;

/// What somebody can look at in a brew under way.
public enum Sight {
  /// Wort in the kettle, below and round the bag.
  WORT_C,
  /// The middle of the grain; the wort where the bag is out.
  GRAIN_C,
  /// The stub before the pump.
  SUCTION_C,
  /// The return hose.
  RETURN_C,
  /// What the steering thermometer shows, its bias included.
  READ_C,
  /// Where the wort boils at the day's pressure.
  BOILS_C,
  /// Wort and goods as they stand.
  HOT_L,
  /// The liquid alone, at 20 C.
  COLD_L,
  /// Strength of the wort outside the bag.
  WORT_PLATO,
  /// Strength of all wort, mixed.
  MIXED_PLATO,
  /// Flow through the loop while mashing.
  FLOW_L_PER_SEC,
  /// Level round the bag, above the floor, while what is switched on is on.
  RING_M,
  /// Wort above the element's highest part, there.
  COVER_M,
  /// Wall left above the wort.
  ROOM_M,
  /// Head to spare at the pump above what it wants.
  SPARE_SUCTION_M,
  /// Wort that leaves the chiller in one pass; the kettle's where there is none such.
  CHILLED_C,
  /// Malt that has not dissolved, in the bag in the wort.
  GOODS_KG,
  /// What the element draws.
  ELEMENT_A,
  /// Duty of the element in the last stretch.
  DUTY_FRAC,
  /// Time that the element was on so far, counted as at full duty.
  DUTY_SEC
}
