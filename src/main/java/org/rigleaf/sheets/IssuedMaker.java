package org.rigleaf.sheets;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Finding;
import org.rigleaf.guidance.Guide;
import org.rigleaf.guidance.Procedure;
import org.rigleaf.rig.Edition;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;

/** Takes down what there is to know of an edition. */
public final class IssuedMaker {
  private IssuedMaker() {}

  /** Where an edition came from: digests of program and wording, and the plain profile. */
  public record Origin(String program, String wording, String profile) {}

  /**
   * An edition to be.
   *
   * @param rig read from the plain profile, without a log
   * @param pieces what is printed of it, of this edition all
   * @param before the edition before it, if there is one
   */
  public static Issued of(
      Rig rig,
      Figures figures,
      BinderMaker maker,
      List<Piece> pieces,
      Origin origin,
      Optional<Issued> before) {
    Guide guide = maker.guide();
    Map<String, String> steps = new LinkedHashMap<>();
    for (Procedure p : guide.procedures().values()) {
      p.steps().forEach(s -> steps.put(s.id(), p.title() + ": " + s.action().plain()));
    }
    Map<String, String> cautions = new LinkedHashMap<>();
    guide.cautions().forEach(c -> cautions.put(c.id(), c.hazard().plain()));
    Map<String, String> findings = new LinkedHashMap<>();
    for (Finding f : maker.findings()) {
      findings.put(f.id() + " " + f.about(), f.text().plain());
    }
    Edition edition = rig.edition();
    return new Issued(
        number(edition),
        edition.date().map(LocalDate::toString).orElse(""),
        edition.note().orElse(""),
        edition.changes().stream().map(Edition.Change::what).toList(),
        origin.program(),
        origin.wording(),
        origin.profile(),
        kept(before.map(Issued::gearCodes), rig.codes()),
        kept(before.map(Issued::topicCodes), codes(pieces)),
        new TreeSet<>(guide.traits()),
        facts(rig),
        pieces.stream().map(p -> since(p, before)).toList(),
        readings(figures, maker),
        cautions,
        steps,
        findings);
  }

  /** The number of an edition; the first is 1. */
  public static int number(Edition edition) {
    return edition.number().known() ? (int) edition.number().value() : 1;
  }

  private static Piece since(Piece piece, Optional<Issued> before) {
    return before.flatMap(b -> b.find(piece)).map(piece::since).orElse(piece);
  }

  private static SortedMap<String, String> kept(
      Optional<SortedMap<String, String>> before, Map<String, String> now) {
    SortedMap<String, String> all = new TreeMap<>();
    before.ifPresent(all::putAll);
    all.putAll(now);
    return all;
  }

  private static Map<String, String> codes(List<Piece> pieces) {
    Map<String, String> codes = new LinkedHashMap<>();
    pieces.stream().filter(p -> p.kind().equals("topic")).forEach(p -> codes.put(p.id(), p.code()));
    pieces.stream()
        .filter(p -> p.kind().equals("card"))
        .forEach(p -> codes.put(CardsMaker.coded(p.id()), p.code()));
    return codes;
  }

  private static SortedMap<String, String> facts(Rig rig) {
    SortedMap<String, String> facts = new TreeMap<>(rig.texts());
    rig.facts().values().stream()
        .filter(Fact::known)
        .forEach(f -> facts.put(f.path(), f.written()));
    return facts;
  }

  private static Map<String, Issued.Reading> readings(Figures figures, BinderMaker maker) {
    Map<String, Issued.Reading> readings = new LinkedHashMap<>();
    figures
        .all()
        .forEach(
            f ->
                readings.put(
                    f.id(),
                    new Issued.Reading(
                        f.entry().pattern(),
                        maker.title(f),
                        f.value().data(),
                        f.unit().symbol(),
                        maker.guide().filler().shown(f))));
    return readings;
  }
}
