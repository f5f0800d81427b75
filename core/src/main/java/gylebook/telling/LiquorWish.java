package gylebook.telling;

import gylebook.plan.LiquorSolver;
import gylebook.recipe.Liquor;
import gylebook.science.LiquorLevels;
import gylebook.telling.Blank.Unfit;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Typed;
import gylebook.units.Unit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// A liquor that somebody wants, and what is in the house to make it with.
///
/// @param wanted what it is to hold, and the pH of its mash
/// @param house salts and acids, each with the steps of the scale it is weighed on
@AnyUnit("what is wanted is ions and a pH")
public record LiquorWish(LiquorLevels wanted, List<LiquorSolver.Stock> house) {
  /// What is in many a brewer's house: no acid, whose strength is to be read off its own label.
  public static final String USUAL_HOUSE =
      "gypsum, calcium chloride dihydrate, Epsom salt, table salt, baking soda";

  /// The steps of an ordinary small scale, and of a syringe.
  public static final String USUAL_SCALE = "0.1 g";

  /// The same for what is measured.
  public static final String USUAL_MEASURE = "0.1 mL";

  private static final double MOST_MG_PER_L = 2000;
  private static final double LEAST_PH = 4.5;
  private static final double MOST_PH = 6.5;
  private static final int MOST_CHARACTERS = 400;
  private static final double ML_PER_L = 1000;
  private static final Pattern WISH = Pattern.compile("(\\p{L}[\\p{L}0-9 ]*?)[ =:]+([0-9].*)");
  private static final String LIKE = "Say it like: calcium 100, sulphate 150, pH 5.4.";
  private static final Set<String> NO_MATTER = Set.of("", "-", "none", "any");

  /// One thing that can be wanted of a liquor.
  public enum Line {
    CALCIUM("calcium", "ca"),
    MAGNESIUM("magnesium", "mg"),
    SODIUM("sodium", "na"),
    CHLORIDE("chloride", "cl"),
    SULPHATE("sulphate", "so4|sulfate"),
    BICARBONATE("bicarbonate", "hco3"),
    PH("pH of the mash", "ph|mash ph");

    private final String words;
    private final String names;

    Line(String words, String names) {
      this.words = words;
      this.names = names;
    }

    /// The same in words for the page.
    public String words() {
      return words;
    }

    private boolean called(String name) {
      String said = name.strip().toLowerCase(Locale.ROOT);
      return said.equals(words.toLowerCase(Locale.ROOT))
          || List.of(names.split("\\|", -1)).contains(said);
    }
  }

  /// Copies the list.
  public LiquorWish {
    house = List.copyOf(house);
  }

  /// Reads the fields of a form.
  ///
  /// @param lines what is wanted, as typed; what is left empty does not matter
  /// @param house names of salts and acids; an acid's name says its strength
  /// @param scale the steps of the scale, as typed: `0.1 g`
  /// @param measure the steps of what acids are measured with, as typed: `0.1 mL`
  public static Filled<LiquorWish> read(
      Map<Line, String> lines, List<String> house, String scale, String measure) {
    String typed = String.join(", ", lines.values());
    return Filling.filled(typed, () -> wish(lines, house, scale, measure));
  }

  /// Reads lines as they are said in the terminal.
  ///
  /// @param wanted `calcium 100, sulphate 150, pH 5.4`
  /// @param house `gypsum, table salt, lactic acid 80 %`
  public static Filled<LiquorWish> read(String wanted, String house, String scale, String measure) {
    return Filling.filled(wanted, () -> wish(lines(wanted), parts(house), scale, measure));
  }

  private static LiquorWish wish(
      Map<Line, String> lines, List<String> house, String scale, String measure) {
    LiquorLevels wanted =
        new LiquorLevels(
            ion(lines, Line.CALCIUM),
            ion(lines, Line.MAGNESIUM),
            ion(lines, Line.SODIUM),
            ion(lines, Line.CHLORIDE),
            ion(lines, Line.SULPHATE),
            ion(lines, Line.BICARBONATE),
            mashPh(lines));
    if (lines.values().stream().allMatch(LiquorWish::noMatter)) {
      throw new Unfit("Nothing is wanted of the liquor yet.", LIKE);
    }
    double stepG = amount("the scale", scale, Unit.known(Quantity.SMALL_MASS, "g"));
    double stepMl = ML_PER_L * amount("the measure", measure, Unit.known(Quantity.VOLUME, "mL"));
    List<LiquorSolver.Stock> stocks = new ArrayList<>();
    for (String name : house) {
      stocks.add(stock(name.strip(), stepG, stepMl));
    }
    if (stocks.isEmpty()) {
      throw new Unfit("Nothing is said to be in the house.", "Name one: " + USUAL_HOUSE + ".");
    }
    return new LiquorWish(wanted, stocks);
  }

  private static boolean noMatter(String typed) {
    return NO_MATTER.contains(typed.strip().toLowerCase(Locale.ROOT));
  }

  private static double ion(Map<Line, String> lines, Line line) {
    String typed = lines.getOrDefault(line, "");
    if (noMatter(typed)) {
      return Double.NaN;
    }
    double ionMgPerL = entered(line.words(), typed, Unit.known(Quantity.CONCENTRATION, "mg/L"));
    if (ionMgPerL > MOST_MG_PER_L) {
      throw new Unfit(
          "Of " + line.words() + " '" + typed.strip() + "' is wanted; no beer holds so much.",
          "Say at most 2000 mg/L.");
    }
    return ionMgPerL;
  }

  private static double mashPh(Map<Line, String> lines) {
    String typed = lines.getOrDefault(Line.PH, "");
    if (noMatter(typed)) {
      return Double.NaN;
    }
    double mashPh = entered(Line.PH.words(), typed, Unit.known(Quantity.PH, "pH"));
    if (!(mashPh >= LEAST_PH && mashPh <= MOST_PH)) {
      throw new Unfit(
          "A pH of '" + typed.strip() + "' is wanted of the mash; malt does not convert there.",
          "Say 4.5 to 6.5; 5.2 to 5.6 is usual, read in a cooled sample.");
    }
    return mashPh;
  }

  private static double amount(String what, String typed, Unit usual) {
    double step = entered("the steps of " + what, typed, usual);
    if (!(step > 0)) {
      throw new Unfit(
          "The steps of " + what + " are '" + typed.strip() + "'.", "Say more than nothing.");
    }
    return step;
  }

  private static double entered(String what, String typed, Unit usual) {
    return switch (Typed.parse(typed, usual)) {
      case Typed.Read(Entered entered) -> entered.inside();
      case Typed.Unclear unclear ->
          throw new Unfit(
              "For " + what + " '" + typed.strip() + "' is said. " + unclear.what(),
              unclear.maybe());
    };
  }

  private static LiquorSolver.Stock stock(String name, double stepG, double stepMl) {
    Liquor.Agent agent = Lines.agent(name);
    return switch (agent) {
      case UNKNOWN ->
          throw new Unfit(
              "What '" + name + "' is to the chemist is not known here.",
              "Name it plainly: " + USUAL_HOUSE + ", chalk, lactic acid 80 %.");
      case LACTIC_ACID, PHOSPHORIC_ACID -> new LiquorSolver.Stock(acid(name), agent, stepMl);
      default -> new LiquorSolver.Stock(name, agent, stepG);
    };
  }

  /// Nothing is dosed from an acid whose strength nobody read: ten times too much is dangerous.
  private static String acid(String name) {
    if (!name.matches(".*\\d ?%.*")) {
      throw new Unfit(
          "How strong the " + name + " is is not said.",
          "Read its label and say it like: " + name + " 80 %.");
    }
    return name;
  }

  private static Map<Line, String> lines(String wanted) {
    Map<Line, String> lines = new EnumMap<>(Line.class);
    if (wanted.length() > MOST_CHARACTERS) {
      throw new Unfit("This is too long for what is wanted of a liquor.", LIKE);
    }
    for (String part : wanted.strip().split(",\\s*(?=\\p{L})|;\\s*", -1)) {
      Matcher wish = WISH.matcher(part.strip());
      if (!wish.matches()) {
        throw new Unfit("'" + part.strip() + "' is nothing that can be wanted of a liquor.", LIKE);
      }
      Line line = line(wish.group(1));
      if (lines.put(line, wish.group(2)) != null) {
        throw new Unfit("The " + line.words() + " is said twice.", "Say it once.");
      }
    }
    return lines;
  }

  private static Line line(String name) {
    for (Line line : Line.values()) {
      if (line.called(name)) {
        return line;
      }
    }
    throw new Unfit("'" + name + "' cannot be wanted of a liquor.", LIKE);
  }

  private static List<String> parts(String house) {
    return List.of(
            house.strip().split("(?:,\\s*(?!anhydrous\\s*(?:[,;]|$))|;\\s*)(?=\\S)|[,;]\\s*$", -1))
        .stream()
        .filter(part -> !part.isBlank())
        .toList();
  }
}
