package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rigleaf.figures.Added;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Edition.Change;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Road;
import org.rigleaf.source.Quantity;
import org.rigleaf.source.Unit;

/**
 * What a change adds to the weight of the rig: the difference of the unloaded weights where the
 * profile has a new one, else the sum of what the changes are said to add.
 */
final class AddedWeight {
  private static final String UNLOADED = "road.weights.unloaded";
  private static final String CARGO = "weight.cargo";

  private AddedWeight() {}

  /** Sentences on the weight; none if nothing is added or taken off. */
  static List<String> told(Rig rig, Comparison comparison, Wording wording) {
    double pounds = pounds(rig, comparison);
    List<String> told = new ArrayList<>();
    if (pounds > 0) {
      told.add(wording.phrase("notice-adds", Map.of("pounds", text(pounds, wording))));
      rig.road().weights().map(Road.Weights::gvwr).filter(Fact::known).stream()
          .mapToDouble(Fact::value)
          .forEach(gvwr -> told.addAll(share(pounds, gvwr, wording)));
    }
    if (pounds < 0) {
      told.add(wording.phrase("notice-takes-off", Map.of("pounds", text(-pounds, wording))));
    }
    if (pounds != 0) {
      cargo(pounds, comparison, wording).ifPresent(told::add);
    }
    return told;
  }

  private static List<String> share(double pounds, double gvwr, Wording wording) {
    double percent = Added.sharePercent(pounds, gvwr);
    String share = wording.amounts().text(percent, Unit.PERCENT_SHARE);
    String told = wording.phrase("notice-share", Map.of("share", share));
    double bound = Added.boundPounds(gvwr);
    return pounds > bound
        ? List.of(told, wording.phrase("notice-flag", Map.of("bound", text(bound, wording))))
        : List.of(told);
  }

  /** The new cargo figure; where the profile has none, the old one less what is added. */
  private static Optional<String> cargo(double pounds, Comparison comparison, Wording wording) {
    Optional<Double> before = cargo(comparison.before());
    Optional<Double> now = cargo(comparison.now());
    boolean stale = now.isPresent() && now.equals(before);
    return now.map(n -> text(stale ? n - pounds : n, wording))
        .map(
            c -> wording.phrase(stale ? "notice-cargo-stale" : "notice-cargo", Map.of("cargo", c)));
  }

  private static Optional<Double> cargo(Issued issued) {
    return Optional.ofNullable(issued.figures().get(CARGO)).map(r -> Double.valueOf(r.data()));
  }

  private static double pounds(Rig rig, Comparison comparison) {
    Optional<Double> before = unloaded(comparison.before());
    Optional<Double> now = unloaded(comparison.now());
    return before.isPresent() && now.isPresent() && !before.equals(now)
        ? now.get() - before.get()
        : rig.edition().changes().stream()
            .map(Change::adds)
            .filter(Fact::known)
            .mapToDouble(Fact::value)
            .sum();
  }

  private static Optional<Double> unloaded(Issued issued) {
    return Optional.ofNullable(issued.facts().get(UNLOADED))
        .flatMap(Quantity::parse)
        .map(q -> q.in(Unit.POUND));
  }

  private static String text(double pounds, Wording wording) {
    return wording.amounts().text(pounds, Unit.POUND);
  }
}
