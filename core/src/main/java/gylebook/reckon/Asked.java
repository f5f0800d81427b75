package gylebook.reckon;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// What a line of words was understood to ask.
public sealed interface Asked {
  /// One calculation is meant.
  ///
  /// @param taken which amount was taken for which input
  /// @param remarks what was read otherwise than typed, or not used
  /// @param others calculations that may have been meant instead
  /// @param missing what it still asks for, in one sentence; empty when nothing is missing
  record Meant(
      Calculation calculation,
      List<Taken> taken,
      List<String> remarks,
      List<Calculation> others,
      String missing)
      implements Asked {
    /// Keeps the lists from being changed.
    public Meant {
      taken = List.copyOf(taken);
      remarks = List.copyOf(remarks);
      others = List.copyOf(others);
    }

    /// The amounts by the names of their inputs, as a calculation takes them.
    public Map<String, String> typed() {
      Map<String, String> typed = new LinkedHashMap<>();
      taken.forEach(each -> typed.put(each.input().key(), each.value()));
      return typed;
    }
  }

  /// Why no calculation was found, or none alone, in a sentence; and what is near.
  record Unclear(String sentence, List<Calculation> near) implements Asked {
    /// Keeps the list from being changed.
    public Unclear {
      near = List.copyOf(near);
    }
  }
}
