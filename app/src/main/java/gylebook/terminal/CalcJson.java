package gylebook.terminal;

import gylebook.reckon.Amount;
import gylebook.reckon.Calculation;
import gylebook.reckon.Input;
import gylebook.reckon.Opinion;
import gylebook.reckon.Origin;
import gylebook.reckon.Output;
import gylebook.reckon.Reckoning;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/// Writes calculations for scripts: unrounded values, each with the unit it is in.
final class CalcJson {
  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  private CalcJson() {}

  static String list(List<Calculation> calculations) {
    return MAPPER.writeValueAsString(calculations.stream().map(CalcJson::described).toList());
  }

  static String explain(Calculation calculation) {
    return MAPPER.writeValueAsString(described(calculation));
  }

  static String answer(Calculation calculation, Reckoning.Answer answer, List<Opinion> opinions) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("calculation", calculation.name());
    Map<String, Object> inputs = new LinkedHashMap<>();
    answer.inputs().forEach(input -> inputs.put(input.name(), amount(input, false)));
    written.put("inputs", inputs);
    written.put("results", answer.results().stream().map(r -> amount(r, true)).toList());
    if (!answer.remarks().isEmpty()) {
      written.put("remarks", answer.remarks());
    }
    written.put("cautions", answer.cautions());
    if (!opinions.isEmpty()) {
      written.put("others", opinions.stream().map(CalcJson::opinion).toList());
    }
    written.put("sources", sources(answer.sources()));
    return MAPPER.writeValueAsString(written);
  }

  private static Map<String, Object> amount(Amount amount, boolean named) {
    Map<String, Object> written = new LinkedHashMap<>();
    if (named) {
      written.put("name", amount.name());
    }
    written.put("value", amount.value());
    written.put("unit", amount.unit());
    written.put("shown", amount.shown());
    return written;
  }

  private static Map<String, Object> opinion(Opinion opinion) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("question", opinion.question());
    written.put("calculation", opinion.calculation().name());
    written.putAll(amount(opinion.amount(), true));
    return written;
  }

  private static Map<String, Object> described(Calculation calculation) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("calculation", calculation.name());
    written.put("group", calculation.group());
    written.put("says", calculation.says());
    written.put("equation", calculation.equation());
    written.put("range", calculation.range());
    written.put("inputs", calculation.inputs().stream().map(CalcJson::input).toList());
    written.put("results", calculation.outputs().stream().map(CalcJson::output).toList());
    written.put("sources", sources(calculation.sources()));
    return written;
  }

  private static Map<String, Object> input(Input input) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("name", input.key());
    written.put("unit", input.unit());
    written.put("text", input.text());
    input.usual().ifPresent(usual -> written.put("usual", usual));
    return written;
  }

  private static Map<String, Object> output(Output output) {
    return Map.of("name", output.name(), "unit", output.unit());
  }

  private static List<Map<String, Object>> sources(List<Origin> sources) {
    return sources.stream()
        .map(
            source -> {
              Map<String, Object> written = new LinkedHashMap<>();
              written.put("key", source.key());
              written.put("at", source.at());
              written.put("trust", source.trust());
              return written;
            })
        .toList();
  }
}
