package gylebook.reckon;

/// What another respected method says to the same question.
///
/// @param question what both answer, in words: `alcohol by volume`
/// @param own the result of the calculation that was asked
/// @param calculation the other method
/// @param amount what it says
public record Opinion(String question, Amount own, Calculation calculation, Amount amount) {}
