package org.rigleaf.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.rigleaf.RandomRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Run;
import org.rigleaf.guidance.Traits;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;

/** Any profile that is right becomes a binder, and the binder speaks of this rig alone. */
class RandomBindersTest {
  private static final Set<String> OPEN = Set.of("contacts.keeper");

  /** Asked for on the first pages even where nobody listed them: the way out and the shut-offs. */
  private static final Set<String> EVERY_RIG =
      Set.of("body.door", "electric.panel", "electric.disconnect");

  /**
   * Said to be {@code none}, yet the page of the six things still asks for its place. To be mended
   * in the wording; the list may only shrink.
   */
  private static final Set<String> TO_MEND = Set.of("electric.panel");

  private final Set<String> stillAsked = new TreeSet<>();
  private final List<String> faults = new ArrayList<>();

  @Test
  void everyRandomRigBecomesABinderWithoutHolesInItsSentences() {
    for (RandomRigs.Profile profile : RandomRigs.all()) {
      try {
        check(profile.name(), profile.rig());
      } catch (RuntimeException e) {
        faults.add(profile.name() + ": " + e + " at " + e.getStackTrace()[0]);
      }
    }
    assertEquals(List.of(), faults.stream().distinct().limit(40).toList());
    assertEquals(new TreeSet<>(TO_MEND), stillAsked, "take what is mended off the list");
  }

  private void check(String name, Rig rig) {
    Figures figures = Figures.of(rig);
    Binder binder =
        BinderMaker.of(rig, figures, Wording.english(), Map.of()).binder(Paper.LETTER, true);
    for (Topic topic : binder.topics()) {
      Texts.of(topic).forEach(run -> check(name + ", " + topic.id(), rig, figures, run));
      Texts.of(topic).forEach(run -> named(name + ", " + topic.id(), binder, run));
    }
  }

  private void check(String where, Rig rig, Figures figures, Run run) {
    if (run.text().contains("{") || run.text().matches("(?s).*\\bnull\\b.*")) {
      faults.add(where + ": prints '" + run.text() + "'");
    }
    if (run.kind() == Run.Kind.BLANK && known(rig, figures, run.key())) {
      faults.add(where + ": a line to fill in for " + run.key() + ", which is known");
    }
    if (run.kind() == Run.Kind.BLANK) {
      lacking(rig, run.key()).ifPresent(g -> asked(where, g, run.key()));
    }
  }

  /** A page that the words send the reader to is in this binder, under the code that they say. */
  private void named(String where, Binder binder, Run run) {
    boolean here =
        binder.topics().stream()
            .anyMatch(t -> t.id().equals(run.key()) && run.text().endsWith(" (" + t.code() + ")"));
    if (run.kind() == Run.Kind.TOPIC && !here) {
      faults.add(where + ": sends to " + run.text() + ", which is not in this binder");
    }
  }

  private void asked(String where, String gear, String key) {
    if (where.endsWith(", six-things") && TO_MEND.contains(gear)) {
      stillAsked.add(gear);
    } else {
      faults.add(where + ": asks for " + key + ", though there is no " + gear);
    }
  }

  /** The gear that a line to fill in speaks of, if the rig is without it. */
  private static Optional<String> lacking(Rig rig, String key) {
    Set<String> traits = Traits.of(rig);
    return Rig.possibleGear().stream()
        .filter(g -> key.equals(g) || key.startsWith(g + "."))
        .filter(g -> !traits.contains(g))
        .filter(g -> traits.contains(g + ".none") || !expected(g, traits))
        .filter(g -> !g.equals("propane.shut-off") || containerListed(traits))
        .findFirst();
  }

  /** Without a cylinder or tank on the list, the line asks for whatever shuts the propane off. */
  private static boolean containerListed(Set<String> traits) {
    return traits.contains("propane.cylinders") || traits.contains("propane.tank");
  }

  /** Not listed, yet part of what is there, safety kit, or a thing that every rig has. */
  private static boolean expected(String gear, Set<String> traits) {
    return EVERY_RIG.contains(gear)
        || gear.equals("road.fuel") && traits.contains("motorized")
        || gear.equals("safety.alarms")
        || traits.contains(gear.substring(0, gear.lastIndexOf('.')))
            && Rig.possibleGear().contains(gear.substring(0, gear.lastIndexOf('.')))
        || gear.startsWith("propane.") && traits.contains("propane");
  }

  private static boolean known(Rig rig, Figures figures, String key) {
    Fact fact = rig.facts().get(key);
    boolean given = fact != null && fact.known();
    boolean said = rig.texts().containsKey(key);
    return !OPEN.contains(key) && (given || said || figures.find(key).isPresent());
  }
}
