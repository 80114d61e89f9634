package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rigleaf.RandomRigs;
import org.rigleaf.sheets.Comparison;
import org.rigleaf.sheets.Issued;
import org.rigleaf.sheets.Piece;

/** Random changes to random rigs: what is exchanged is what differs, and no code comes twice. */
class ChangesTest {
  private static final int RIGS = 6;
  private static final int EVERY = 211; // of some 700 variations of a rig

  @TempDir private Path folder;

  @Test
  void whatIsExchangedIsWhatDiffersAndCodesAreNotGivenAgain() throws Exception {
    for (RandomRigs.Profile rig : RandomRigs.all().subList(0, RIGS)) {
      Issued before = issued(rig.yaml(), 1);
      int at = 0;
      for (RandomRigs.Profile changed : RandomRigs.variations(rig)) {
        if (at++ % EVERY == 0) {
          check(changed.name(), before, issued(changed.yaml(), 2));
        }
      }
      Files.delete(folder.resolve("rush.editions/1.json"));
    }
  }

  /** The first is kept beside the profile. */
  private Issued issued(String yaml, int number) throws Exception {
    String edition = "edition: {number: " + number + ", date: 2026-0" + number + "-01}\n";
    String text = yaml.replaceAll("(?m)^edition: .*\n", "") + edition;
    Profile profile = Profile.read(Files.writeString(folder.resolve("rush.yaml"), text));
    Issued issued = Issuing.of(profile, Output.TEMPLATES).now().orElseThrow();
    if (number == 1) {
      profile.editions().keep(issued);
    }
    return issued;
  }

  private static void check(String name, Issued before, Issued now) {
    Set<String> old = digests(before.pieces());
    Set<String> today = digests(now.pieces());
    Comparison comparison = new Comparison(before, now);
    assertEquals(without(old, today), digests(comparison.remove()), name);
    assertEquals(without(today, old), digests(comparison.insert()), name);
    for (Piece p : now.pieces()) {
      boolean same = old.contains(p.id() + " " + p.digest());
      assertEquals(same ? 1 : 2, p.edition(), name + ": " + p.id());
      assertEquals(same ? "2026-01-01" : "2026-02-01", p.date(), name + ": " + p.id());
    }
    kept(name, before.topicCodes(), now.topicCodes());
    kept(name, before.gearCodes(), now.gearCodes());
    double share = (double) comparison.insert().size() / now.pieces().size();
    assertEquals(share > 0.6, comparison.whole(), name + ": " + share);
  }

  private static void kept(String name, Map<String, String> before, Map<String, String> now) {
    before.forEach((id, code) -> assertEquals(code, now.get(id), name + ": " + id));
    assertTrue(new HashSet<>(now.values()).size() == now.size(), name + ": a code twice");
  }

  private static Set<String> digests(List<Piece> pieces) {
    return pieces.stream()
        .map(p -> p.id() + " " + p.digest())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> without(Set<String> all, Set<String> some) {
    Set<String> left = new TreeSet<>(all);
    left.removeAll(some);
    return left;
  }
}
