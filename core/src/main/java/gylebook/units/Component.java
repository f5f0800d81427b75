package gylebook.units;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/// One place in a tree of records and lists, by its path: `hops.1.massG`.
///
/// Recipe and rig are such trees. A path is the name of a value in the sentences, in the files and
/// in the reasons of a forecast alike; changing a value makes a new tree that shares the rest.
@AnyUnit("holds whatever stands at the path")
public final class Component {
  /// Asking a class for its components copies them each time; a page asks hundreds of times.
  private static final ClassValue<RecordComponent[]> COMPONENTS =
      new ClassValue<>() {
        @Override
        protected RecordComponent[] computeValue(Class<?> type) {
          return type.isRecord() ? type.getRecordComponents() : new RecordComponent[0];
        }
      };

  private Component() {}

  /// What stands there.
  public static Object at(Object tree, String path) {
    Object here = tree;
    for (String step : path.split("\\.", -1)) {
      here = here instanceof List<?> list ? list.get(Integer.parseInt(step)) : read(here, step);
    }
    return here;
  }

  /// The tree with another value there.
  ///
  /// @throws IllegalArgumentException with the record's own sentence when it refuses the value
  public static <T> T with(T tree, String path, Object value) {
    String[] steps = path.split("\\.", 2);
    Object changed = steps.length == 1 ? value : with(child(tree, steps[0]), steps[1], value);
    return tree instanceof List<?> list
        ? same(tree, replaced(list, Integer.parseInt(steps[0]), changed))
        : made(tree, steps[0], changed);
  }

  /// The tree without one line of a list.
  public static <T> T without(T tree, String listPath, int number) {
    List<Object> shorter = new ArrayList<>((List<?>) at(tree, listPath));
    shorter.remove(number);
    return with(tree, listPath, List.copyOf(shorter));
  }

  /// The tree with one more line in a list.
  public static <T> T longer(T tree, String listPath, Object line) {
    List<Object> longer = new ArrayList<>((List<?>) at(tree, listPath));
    longer.add(line);
    return with(tree, listPath, List.copyOf(longer));
  }

  private static Object child(Object tree, String step) {
    return tree instanceof List<?> list ? list.get(Integer.parseInt(step)) : read(tree, step);
  }

  private static List<Object> replaced(List<?> list, int number, Object value) {
    List<Object> changed = new ArrayList<>(list);
    changed.set(number, value);
    return List.copyOf(changed);
  }

  private static Object read(Object record, String name) {
    RecordComponent component =
        Arrays.stream(components(record))
            .filter(c -> c.getName().equals(name))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("There is no '" + name + "'."));
    try {
      return Objects.requireNonNull(component.getAccessor().invoke(record), name);
    } catch (IllegalAccessException | InvocationTargetException failure) {
      throw new IllegalStateException("cannot read " + name, failure);
    }
  }

  private static RecordComponent[] components(Object record) {
    RecordComponent[] components = COMPONENTS.get(record.getClass());
    if (components.length == 0) {
      throw new IllegalArgumentException("There is nothing inside " + record + ".");
    }
    return components;
  }

  private static <T> T made(T record, String name, Object value) {
    Object before = read(record, name);
    if (before.equals(value)) {
      return record;
    }
    Class<?>[] types =
        Arrays.stream(components(record)).map(RecordComponent::getType).toArray(Class<?>[]::new);
    Object[] values =
        Arrays.stream(components(record))
            .map(c -> c.getName().equals(name) ? value : read(record, c.getName()))
            .toArray();
    try {
      return same(record, record.getClass().getDeclaredConstructor(types).newInstance(values));
    } catch (InvocationTargetException failure) {
      if (failure.getCause() instanceof IllegalArgumentException refused) {
        throw refused;
      }
      throw new IllegalStateException("cannot make " + record.getClass(), failure);
    } catch (ReflectiveOperationException failure) {
      throw new IllegalStateException("cannot make " + record.getClass(), failure);
    }
  }

  /// What was made of a tree is of the tree's own type, by construction.
  @SuppressWarnings("unchecked")
  private static <T> T same(T tree, Object made) {
    Objects.requireNonNull(tree);
    return (T) made;
  }
}
