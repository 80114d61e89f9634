package org.rigleaf.guidance;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Walk;

/** The labels of one rig: one a piece of coded gear in walking order, then those of their own. */
public final class LabelTexts {
  private static final int ARMS_LENGTH_FT = 2;

  private final Rig rig;
  private final Guide guide;
  private final Collection<LabelText> texts;

  private LabelTexts(Rig rig, Guide guide, Collection<LabelText> texts) {
    this.rig = rig;
    this.guide = guide;
    this.texts = texts;
  }

  /** All labels of the rig, in the order in which one sticks them on. */
  public static List<Label> of(Rig rig, Wording wording, Guide guide) {
    return new LabelTexts(rig, guide, wording.labelTexts.values()).all();
  }

  private List<Label> all() {
    Stream<Label> gear =
        rig.gear().stream()
            .sorted(Comparator.comparingDouble(g -> Walk.step(g.place(), Face.INSIDE)))
            .map(this::label);
    Stream<Label> own =
        texts.stream()
            .filter(t -> t.gear().isEmpty() && t.condition().holds(guide::has))
            .map(t -> label(t, "", t.id(), t.title()));
    return Stream.concat(gear, own).toList();
  }

  private Label label(Gear gear) {
    String name = guide.places().name(gear.id());
    Optional<LabelText> text =
        texts.stream()
            .filter(t -> t.gear().equals(gear.type()) && guide.holds(t.condition(), gear.id()))
            .findFirst();
    return text.map(t -> label(t, gear.id(), gear.id(), name)).orElseGet(() -> bare(gear, name));
  }

  private Label bare(Gear gear, String name) {
    String code = rig.codes().get(gear.id());
    return new Label(gear.id(), gear.id(), code, Words.NONE, name, Words.NONE, ARMS_LENGTH_FT);
  }

  private Label label(LabelText text, String gear, String id, String name) {
    List<Words> lines =
        text.lines().stream()
            .filter(l -> guide.holds(l.condition(), gear))
            .map(l -> guide.filler().fill(l.text(), gear))
            .toList();
    return new Label(
        id,
        gear,
        rig.codes().getOrDefault(gear, ""),
        guide.filler().fill(text.word(), gear),
        name,
        Words.joined(lines),
        text.feet());
  }
}
