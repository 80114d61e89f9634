package org.rigleaf.guidance;

import java.util.List;
import java.util.stream.Stream;

/** The steps of a wording's items, whatever their conditions. */
final class Items {
  private Items() {}

  static Stream<Item.StepText> steps(List<Item> items) {
    return items.stream().flatMap(Items::steps);
  }

  static Stream<Item.StepText> steps(Item item) {
    if (item instanceof Item.StepText s) {
      return Stream.of(s);
    } else if (item instanceof Item.EachText each) {
      return steps(each.steps());
    }
    Item.ByText by = (Item.ByText) item;
    Stream<Item.StepText> cases = by.cases().values().stream().flatMap(Items::steps);
    return Stream.concat(cases, Stream.concat(steps(by.otherwise()), steps(by.unknown())));
  }
}
