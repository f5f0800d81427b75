package gylebook.telling;

import java.util.List;

/// How the wall sheet looks, and the cautions that stand on every one.
final class SheetLook {
  private SheetLook() {}

  /// Burn times: table for hot tap water in docs/sources.bib (scald-table).
  static final List<String> ALWAYS =
      List.of(
          "Scald: liquor and wort at 65 °C (150 °F) burn skin in about a second and a half, near the"
              + " boil at once. Long sleeves, gloves, closed shoes; children and pets elsewhere.",
          "Lift: never a full bag or a full fermenter with the arms out. Hoist, or two people.",
          "Mains: test the ground-fault breaker before the day. Nothing goes into the kettle while"
              + " the element is on; the element never stands bare. Air the room: steam is wet, and a"
              + " ferment's gas kills without warning.");

  /// Sizes: 13 pt has capitals of about 3.2 mm, which is 1/200 of an arm's length (rule of thumb of
  /// the FAA's human-factors training). Where another font stands in for the first, its small
  /// letters are made as high as that one's (0.519 of its size), so that a wide one still fits.
  static final String CSS =
      """
      @page { margin: 8mm 11mm; }
      * { box-sizing: border-box; }
      body { margin: 0 auto; max-width: 194mm; background: #fff; color: #000;
        font: 11.5pt/1.13 "Liberation Sans", Arial, Helvetica, sans-serif;
        font-size-adjust: 0.519; }
      h1 { font-size: 21pt; margin: 0 6mm 0 0; line-height: 1.1; display: inline-block; }
      h2 { font-size: 13.5pt; margin: 1.5mm 0 0.5mm; border-bottom: 0.5mm solid #000;
        break-after: avoid; }
      p { margin: 0; }
      .fill { font-weight: bold; display: inline-block; }
      .fill i { display: inline-block; width: 28mm; border-bottom: 0.3mm solid #000; }
      table { border-collapse: collapse; width: 100%; }
      caption { text-align: left; font-weight: bold; }
      th, td { text-align: left; vertical-align: top; padding: 0.3mm 1.5mm 0.3mm 0; }
      th { white-space: nowrap; font-size: 12.5pt; }
      thead th { font-size: 11pt; border-bottom: 0.3mm solid #000; }
      tr, .guard, li { break-inside: avoid; }
      .weigh > div { columns: 2; column-gap: 6mm; }
      .weigh table { break-inside: avoid; }
      .weigh th { text-align: right; }
      .weigh td:last-child { width: 100%; }
      .weigh th, .weigh td { padding-right: 1.5mm; }
      .tick { width: 7mm; }
      .tick b { display: inline-block; width: 4.4mm; height: 4.4mm; border: 0.4mm solid #000; }
      .day tbody tr, .off tbody tr { border-bottom: 0.2mm solid #000; }
      .day .clock { font-size: 14pt; font-weight: bold; }
      .day .clock span { display: block; font-size: 9pt; font-weight: normal;
        white-space: nowrap; }
      .day .does { width: 60%; }
      .day strong, .day .expect { font-size: 12.5pt; }
      .day .hands { white-space: nowrap; }
      .expect span { display: block; white-space: nowrap; }
      .blank span { display: block; width: 16mm; font-size: 12.5pt;
        border-bottom: 0.2mm solid #000; }
      ul { margin: 0; padding-left: 5mm; }
      .reserves { columns: 2; column-gap: 6mm; }
      .guard { display: flex; gap: 3mm; margin: 0 0 0.6mm; }
      .guard > b { flex: none; width: 15mm; height: 6.4mm; line-height: 5.6mm;
        text-align: center; border: 0.4mm solid #000; }
      .guard.note > b { border-radius: 2mm; }
      .guard.stop > b { border-width: 1mm; line-height: 4.4mm; background: #000; color: #fff;
        print-color-adjust: exact; }
      .guard.soon > b { border-style: double; border-width: 1mm; line-height: 4.4mm; }
      .reserves, .guard, .always { font-size: 10.5pt; line-height: 1.1; }
      .always { margin-top: 1mm; }
      .whole { break-inside: avoid; }
      .lines { font-weight: bold; margin-top: 1mm; }
      .lines i { display: block; height: 7.5mm; border-bottom: 0.2mm solid #000; }
      footer { font-size: 9.5pt; margin-top: 1mm; }
      """;
}
