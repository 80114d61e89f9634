package org.rigleaf.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.rigleaf.guidance.Label;
import org.rigleaf.guidance.Wording;
import org.rigleaf.print.Blocks;
import org.rigleaf.print.Templates;
import org.rigleaf.sheets.Binder;
import org.rigleaf.sheets.CardSize;
import org.rigleaf.sheets.CardTask;
import org.rigleaf.sheets.CardsMaker;
import org.rigleaf.sheets.ChangeRecord;
import org.rigleaf.sheets.Comparison;
import org.rigleaf.sheets.Edition;
import org.rigleaf.sheets.Effective;
import org.rigleaf.sheets.Issued;
import org.rigleaf.sheets.IssuedMaker;
import org.rigleaf.sheets.IssuedMaker.Origin;
import org.rigleaf.sheets.LabelMaker;
import org.rigleaf.sheets.NoticeMaker;
import org.rigleaf.sheets.Paper;
import org.rigleaf.sheets.Piece;
import org.rigleaf.sheets.Topic;

/**
 * A profile as an edition: what it would keep, beside the edition before it.
 *
 * @param before the edition before; empty for the first
 * @param now this one, issued or not; empty while nobody asks, because nothing was issued yet
 * @param draft true if no issued edition is the same
 */
record Issuing(Profile profile, Optional<Issued> before, Optional<Issued> now, boolean draft) {
  private static final Program PROGRAM = Program.running();

  /** A profile to build: compared with the editions beside it, if any was issued. */
  static Issuing toBuild(Profile profile, Templates templates) {
    return profile.editions().all().isEmpty()
        ? new Issuing(profile, Optional.empty(), Optional.empty(), true)
        : of(profile, templates);
  }

  /** Compares a profile with the editions beside it. */
  static Issuing of(Profile profile, Templates templates) {
    int number = IssuedMaker.number(profile.rig().edition());
    return since(profile, profile.editions().before(number), templates);
  }

  /** Compares a profile with one edition. */
  static Issuing since(Profile profile, Optional<Issued> before, Templates templates) {
    Issued now = issued(profile.kept(), before, templates);
    boolean same = profile.editions().of(now.number()).filter(now::sameAs).isPresent();
    return new Issuing(profile, before, Optional.of(now), !same);
  }

  /** This edition, issued. */
  Issuing issued() {
    return new Issuing(profile, before, now, false);
  }

  private static Issued issued(Profile kept, Optional<Issued> before, Templates templates) {
    Origin origin = new Origin(PROGRAM.code(), PROGRAM.wording(), kept.plain());
    return IssuedMaker.of(
        kept.rig(), kept.figures(), kept.maker(), pieces(kept, templates), origin, before);
  }

  private static List<Piece> pieces(Profile kept, Templates templates) {
    Binder binder = kept.maker().binder(Paper.LETTER, false);
    List<Piece> pieces = new ArrayList<>();
    for (Topic t : binder.topics()) {
      String html = templates.topic(t, binder);
      pieces.add(
          kept.maker().piece("topic", t.id(), t.code(), t.title(), html, Blocks.digests(html)));
    }
    for (Label l : new LabelMaker(kept.rig(), kept.maker(), Wording.english()).labels()) {
      String html = templates.sheet("label", l);
      pieces.add(kept.maker().piece("label", l.id(), l.code(), l.name(), html, List.of()));
    }
    CardsMaker cards =
        new CardsMaker(kept.rig(), kept.maker(), Wording.english(), CardSize.HALF_LETTER);
    for (CardTask t : cards.tasks()) {
      String html = templates.sheet("card", t);
      pieces.add(kept.maker().piece("card", t.id(), t.code(), t.title(), html, List.of()));
    }
    return pieces;
  }

  /** In which edition each piece of a kind last changed. */
  List<Effective> effective(String kind) {
    return now.stream()
        .flatMap(n -> n.pieces().stream())
        .filter(p -> p.kind().equals(kind))
        .map(p -> new Effective(p.id(), String.valueOf(p.edition()), NoticeMaker.date(p.date())))
        .toList();
  }

  /** Each edition up to this one. */
  List<Edition> record() {
    return ChangeRecord.of(profile.editions().all(), profile.rig().edition());
  }

  /** A topic's HTML with a mark on each block that this edition changes. */
  String marked(Topic topic, String html) {
    int number = IssuedMaker.number(profile.rig().edition());
    Optional<Piece> piece =
        before.stream()
            .flatMap(b -> now.orElseThrow().pieces().stream())
            .filter(p -> p.kind().equals("topic") && p.id().equals(topic.id()))
            .filter(p -> p.edition() == number)
            .findFirst();
    return piece.map(p -> Blocks.marked(html, p.parts(), changed(p), number)).orElse(html);
  }

  private Set<String> changed(Piece piece) {
    Set<String> changed = new HashSet<>(piece.parts());
    before.flatMap(b -> b.find(piece)).ifPresent(p -> p.parts().forEach(changed::remove));
    return changed;
  }

  /** What differs from the edition before; empty for the first. */
  Optional<Comparison> comparison() {
    return before.map(b -> new Comparison(b, now.orElseThrow()));
  }

  /**
   * What changed a piece: {@code rig}, {@code wording} or {@code both}. The profile of the edition
   * before is filled into the words of today; what then differs from that edition is the wording's
   * doing, what differs from this one the rig's.
   */
  Function<Piece, String> causes(Templates templates) {
    Issued then = before.orElseThrow();
    Issued today = now.orElseThrow();
    if (then.wording().equals(today.wording()) && then.program().equals(today.program())) {
      return p -> "rig";
    }
    Optional<Issued> again =
        profile.kept(then.profile()).map(old -> issued(old, Optional.empty(), templates));
    return again
        .<Function<Piece, String>>map(
            a ->
                p -> {
                  boolean wording = !a.same(then, p);
                  boolean rig = !a.same(today, p);
                  return wording && rig ? "both" : wording ? "wording" : "rig";
                })
        .orElse(p -> "both");
  }
}
