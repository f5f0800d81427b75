package gylebook.simulate;

/// Each unknown of a stage is `fixed + gain * kettle`; the gains depend on the step alone.
final class Chain {
  double hoseGainFactor;
  double hoseDivFactor;
  double headHoseFactor;
  double headBedFactor;
  double headDivFactor;
  double bedKettleFactor;
  double bedHeadFactor;
  double bedDivFactor;
  double wallGainFactor;
  double wallDivFactor;
  double stubGainFactor;
  double stubDivFactor;
  double probeDivFactor;
  double headGainFactor;
  double bedGainFactor;
  double probeGainFactor;
  double dutyGainFracPerK;
  double dutyProbeFracPerK;
  double integralProbeFactor;
  double integralDivFactor;
  double kettleDivFactor;
}
