package org.rigleaf.guidance;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A piece of a procedure as the wording has it. */
sealed interface Item {
  /** One step; {@code at}, {@code kit} and the texts may be empty. */
  record StepText(
      String id,
      Condition condition,
      List<String> does,
      List<String> cautions,
      Optional<String> at,
      Optional<String> kit,
      TextTemplate action,
      TextTemplate see,
      TextTemplate ifNot,
      OnCard card)
      implements Item {}

  /** One block of steps a value of an enum. */
  record ByText(
      String path, Map<String, List<Item>> cases, List<Item> otherwise, List<Item> unknown)
      implements Item {}

  /** One block of steps a list item. */
  record EachText(String list, Condition condition, List<Item> steps) implements Item {}
}
