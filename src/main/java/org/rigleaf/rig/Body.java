package org.rigleaf.rig;

import static org.rigleaf.source.Unit.COUNT;
import static org.rigleaf.source.Unit.FOOT;
import static org.rigleaf.source.Unit.POUND;
import static org.rigleaf.source.Unit.SHARE;

import java.util.List;
import java.util.Optional;

/**
 * What opens, folds and holds the body.
 *
 * <pre>
 * body:
 *   door: {at: curb 6 ft}
 *   slides: [{name: Dinette slide, drive: electric, at: street 10 ft, width: 9 ft, depth: 2 ft 6 in, switch: by the door}]
 * </pre>
 */
public record Body(
    Optional<Gear> door,
    List<Slide> slides,
    List<Awning> awnings,
    Optional<Steps> steps,
    Optional<Stabilizers> stabilizers,
    Optional<TongueJack> tongueJack,
    Optional<Levelling> levelling,
    Optional<Stabilizers> camperLegs,
    List<Bed> beds,
    List<BedEnd> bedEnds,
    Optional<Gear> liftRoof,
    Optional<Gear> ramp,
    Optional<Roof> roof,
    Optional<Gear> ladder,
    List<Bay> bays,
    Optional<Gear> windowGuards,
    List<Antenna> antennas,
    Optional<Gear> cableInlet,
    Shell shell) {

  static Body read(Section s) {
    return new Body(
        s.group("door", d -> d.gear(Letter.BODY)),
        s.items("slides", "slide", "name", Slide::read),
        s.items("awnings", "awning", "name", Awning::read),
        s.group("steps", Steps::read),
        s.group("stabilizers", Stabilizers::read),
        s.group("tongue-jack", TongueJack::read),
        s.group("levelling", Levelling::read),
        s.group("camper-legs", Stabilizers::read),
        s.items("beds", "bed", "name", Bed::read),
        s.items("bed-ends", "bed end", "name", BedEnd::read),
        s.group("lift-roof", r -> r.gear(Letter.BODY)),
        s.group("ramp", r -> r.gear(Letter.BODY)),
        s.group("roof", Roof::read),
        s.group("ladder", l -> l.gear(Letter.BODY)),
        s.items("bays", "bay", "name", Bay::read),
        s.group("window-guards", w -> w.gear(Letter.BODY)),
        s.items("antennas", "antenna", "name", Antenna::read),
        s.group("cable-inlet", c -> c.gear(Letter.BODY)),
        s.part("shell", Shell::read));
  }

  /** What moves a slide; in the wall stand two motors, one at each side. */
  public enum SlideDrive implements Choice {
    ELECTRIC,
    IN_WALL,
    HYDRAULIC,
    CABLE,
    HAND
  }

  /** A slide-out room; width along the wall, depth outward; topper: an awning rolls over it. */
  public record Slide(
      Gear gear,
      Optional<SlideDrive> drive,
      Fact width,
      Fact depth,
      Answer topper,
      Optional<String> switchPlace,
      Optional<String> order) {
    static Slide read(Section s) {
      return new Slide(
          s.gear(Letter.BODY),
          s.choice("drive", SlideDrive.class),
          s.positive("width", FOOT),
          s.positive("depth", FOOT),
          s.yes("topper"),
          s.words("switch"),
          s.words("order"));
    }
  }

  /** How a bed is made ready. */
  public enum BedKind implements Choice {
    TABLE,
    SOFA,
    BUNK,
    WALL,
    LIFT
  }

  /** A bed that is folded, climbed or lowered; a bed that always stands ready needs no entry. */
  public record Bed(Gear gear, Optional<BedKind> kind, Fact carries, Optional<String> switchPlace) {
    static Bed read(Section s) {
      return new Bed(
          s.gear(Letter.BODY),
          s.choice("kind", BedKind.class),
          s.positive("carries", POUND),
          s.words("switch"));
    }
  }

  /** A bed of a folding trailer that is pulled out at one end; reach outward. */
  public record BedEnd(Gear gear, Fact reach) {
    static BedEnd read(Section s) {
      return new BedEnd(s.gear(Letter.BODY), s.positive("reach", FOOT));
    }
  }

  /** What a roof is covered with. */
  public enum Skin implements Choice {
    RUBBER,
    PLASTIC,
    FIBERGLASS,
    METAL,
    CLOTH
  }

  /** The roof: its skin, whether it is made to walk on, what its joints are sealed with. */
  public record Roof(Optional<Skin> skin, Answer walkOn, Optional<String> sealant) {
    static Roof read(Section s) {
      return new Roof(s.choice("skin", Skin.class), s.yes("walk-on"), s.words("sealant"));
    }
  }

  /** A bay behind an outside door: what is in it, and how its door is caught. */
  public record Bay(Gear gear, List<String> holds, Optional<String> latch) {
    static Bay read(Section s) {
      return new Bay(s.gear(Letter.BODY), s.list("holds"), s.words("catch"));
    }
  }

  /** How an antenna stands. */
  public enum AntennaKind implements Choice {
    CRANK,
    FIXED,
    DISH
  }

  /** An antenna on the roof; where the switch of its booster is. */
  public record Antenna(Gear gear, Optional<AntennaKind> kind, Optional<String> booster) {
    static Antenna read(Section s) {
      return new Antenna(
          s.gear(Letter.BODY), s.choice("kind", AntennaKind.class), s.words("booster"));
    }
  }

  /**
   * How well the body keeps heat: R-values in h ft2 degF / Btu, windows as a share of the walls,
   * air changes an hour.
   */
  public record Shell(
      Fact walls, Fact roof, Fact floor, Fact windows, Fact windowShare, Fact airChanges) {
    static Shell read(Section s) {
      return new Shell(
          s.bare("walls", COUNT, 0.5, 60),
          s.bare("roof", COUNT, 0.5, 60),
          s.bare("floor", COUNT, 0.5, 60),
          s.bare("windows", COUNT, 0.5, 10),
          s.between("window-share", SHARE, 0, 0.9),
          s.between("air-changes", COUNT, 0, 20));
    }
  }

  /** By hand or by power. */
  public enum AwningDrive implements Choice {
    HAND,
    POWER
  }

  /** An awning; width along the wall, reach outward. */
  public record Awning(
      Gear gear,
      Optional<AwningDrive> drive,
      Fact width,
      Fact reach,
      Optional<String> switchPlace) {
    static Awning read(Section s) {
      return new Awning(
          s.gear(Letter.BODY),
          s.choice("drive", AwningDrive.class),
          s.positive("width", FOOT),
          s.positive("reach", FOOT),
          s.words("switch"));
    }
  }

  /** The entry steps. */
  public record Steps(Gear gear, Optional<AwningDrive> drive, Optional<String> switchPlace) {
    static Steps read(Section s) {
      return new Steps(
          s.gear(Letter.BODY), s.choice("drive", AwningDrive.class), s.words("switch"));
    }
  }

  /** What turns the steady legs. */
  public enum LegDrive implements Choice {
    CRANK,
    POWER
  }

  /** Legs that the rig stands on: those that steady it, or those that carry a camper. */
  public record Stabilizers(
      Gear gear,
      Fact count,
      Optional<LegDrive> drive,
      Optional<Place> crank,
      Optional<String> switchPlace) {
    static Stabilizers read(Section s) {
      return new Stabilizers(
          s.gear(Letter.BODY),
          s.between("count", COUNT, 1, 8),
          s.choice("drive", LegDrive.class),
          s.group("crank", Section::place),
          s.words("switch"));
    }
  }

  /** What drives the tongue jack. */
  public enum JackDrive implements Choice {
    HAND,
    ELECTRIC
  }

  /** The tongue jack. */
  public record TongueJack(Gear gear, Optional<JackDrive> drive, Optional<String> switchPlace) {
    static TongueJack read(Section s) {
      return new TongueJack(
          s.gear(Letter.BODY), s.choice("drive", JackDrive.class), s.words("switch"));
    }
  }

  /** What lifts the rig level. */
  public enum LevellingKind implements Choice {
    HYDRAULIC,
    ELECTRIC,
    AIR
  }

  /** Built-in levelling. */
  public record Levelling(Gear gear, Optional<LevellingKind> kind, Optional<String> switchPlace) {
    static Levelling read(Section s) {
      return new Levelling(
          s.gear(Letter.BODY), s.choice("kind", LevellingKind.class), s.words("switch"));
    }
  }
}
