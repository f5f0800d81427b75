package gylebook.plan;

/// What the brewer sets on the day: the planner's answer.
///
/// @param liquorL cold liquor into the kettle, at 20 C
/// @param strikeC reading at which the malt goes in
/// @param mashSetC set point that keeps the grain at its first rest
/// @param gristFactor every line of the grist times this
/// @param hopFactor every bittering addition times this
/// @param boilDutyFrac duty that gives the wanted evaporation
/// @param topUpL liquor held back and added when the bag is out
public record Settings(
    double liquorL,
    double strikeC,
    double mashSetC,
    double gristFactor,
    double hopFactor,
    double boilDutyFrac,
    double topUpL) {}
