package gylebook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.rig.Parameter;
import gylebook.rig.Rig;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Settings;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MoverWordsTest {
  private static final Settings SET = new Settings(20, 70, 0, 1, 1, 0.7, 0);

  @Test
  void everyNumberThatIsDrawnHasWords() {
    for (Recipe recipe : List.of(Demo.copperBitter(), Demo.wheatBeer())) {
      for (Rig rig : List.of(DemoRigs.household(), DemoRigs.smallFlat())) {
        BrewDay day = new BrewDay(recipe, rig, SET);
        Ensemble few = Ensemble.of(day, 1, 2, () -> false, _ -> {}).orElseThrow();
        assertThat(few.doubts())
            .isNotEmpty()
            .allSatisfy(path -> assertThat(MoverWords.says(path)).as(path).isNotBlank());
      }
    }
  }

  @Test
  void everyParameterOfTheRigHasWordsOfItsOwn() throws ReflectiveOperationException {
    List<String> paths = parameters();
    assertThat(paths).contains("kettle.deadL").hasSizeGreaterThan(40);
    assertThat(paths).allMatch(MoverWords::knows);
    assertThat(paths.stream().map(MoverWords::says)).doesNotHaveDuplicates();
  }

  private static List<String> parameters() throws ReflectiveOperationException {
    List<String> paths = new ArrayList<>();
    for (RecordComponent part : Rig.class.getRecordComponents()) {
      if (part.getType().isRecord()) {
        for (RecordComponent number : part.getType().getRecordComponents()) {
          if (number.getType() == Parameter.class) {
            paths.add(part.getName() + "." + number.getName());
          }
        }
      }
    }
    return paths;
  }

  @Test
  void aPathWithoutWordsIsRefusedByName() {
    assertThatThrownBy(() -> MoverWords.says("kettle.shoeSizeM"))
        .hasMessageContaining("kettle.shoeSizeM");
    assertThat(MoverWords.says("grist.1.extractFrac")).isEqualTo("what line 2 of the grist yields");
  }
}
