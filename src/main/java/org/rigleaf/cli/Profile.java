package org.rigleaf.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rigleaf.figures.Amounts;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Upkeep;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Photo;
import org.rigleaf.rig.Rig;
import org.rigleaf.sheets.BinderMaker;
import org.rigleaf.source.Node;
import org.rigleaf.source.NormalYaml;
import org.rigleaf.source.Picture;
import org.rigleaf.source.Problems;
import org.rigleaf.source.ProblemsFound;
import org.rigleaf.source.Yaml;

/**
 * A profile read from its file, with its figures and guidance.
 *
 * @param root what the file holds
 * @param plain its text in the plain form, without private values
 * @param editions the editions issued of it
 * @param photos those beside it
 */
record Profile(
    Path file,
    Node.Mapping root,
    String plain,
    Rig rig,
    Figures figures,
    BinderMaker maker,
    Editions editions,
    Photo.Shelf photos) {
  private static final Picture GONE = new Picture("", 1, 1);
  private static final Set<String> NEVER_KEPT = Set.of("private");

  /**
   * Reads a profile, the log and the issued editions beside it.
   *
   * @throws ProblemsFound if the profile has problems
   * @throws IOException if the file cannot be read
   */
  static Profile read(Path file) throws ProblemsFound, IOException {
    Problems problems = new Problems();
    Optional<Node> root = Yaml.read(file, file.toString(), problems);
    Path log = file.resolveSibling(name(file) + ".log.yaml");
    Optional<Node> notes =
        Files.exists(log) ? Yaml.read(log, log.toString(), problems) : Optional.empty();
    if (!problems.none()) {
      throw new ProblemsFound(problems.sorted());
    }
    Editions editions = Editions.beside(file, name(file));
    return of(file, root.orElseThrow(), notes, editions, shelf(file));
  }

  private static Profile of(
      Path file, Node root, Optional<Node> log, Editions editions, Photo.Shelf photos)
      throws ProblemsFound {
    Wording wording = Wording.english();
    Rig rig = Rig.read(root, log, editions.gearCodes(), wording.vocabulary(), photos);
    Figures figures = Figures.of(rig, Upkeep.intervals(rig, wording));
    BinderMaker maker = BinderMaker.of(rig, figures, wording, editions.topicCodes());
    String plain = NormalYaml.text((Node.Mapping) root, NEVER_KEPT);
    return new Profile(file, (Node.Mapping) root, plain, rig, figures, maker, editions, photos);
  }

  /**
   * The rig that a text would describe if it stood in a file.
   *
   * @throws ProblemsFound if the text has problems
   */
  static Rig draft(Path file, String text) throws ProblemsFound {
    Problems problems = new Problems();
    Optional<Node> root =
        Yaml.read(text.getBytes(StandardCharsets.UTF_8), file.toString(), problems);
    if (!problems.none()) {
      throw new ProblemsFound(problems.sorted());
    }
    return Rig.read(
        root.orElseThrow(),
        Optional.empty(),
        Map.of(),
        Wording.english().vocabulary(),
        shelf(file));
  }

  /**
   * The profile as an edition keeps it: what its plain text says, without private values and
   * without the log, which changes between editions.
   */
  Profile kept() {
    return kept(plain)
        .orElseThrow(() -> new IllegalStateException("the plain form of " + file + " fails"));
  }

  /** Another plain profile in the place of this one; empty if the program cannot read it now. */
  Optional<Profile> kept(String text) {
    Problems problems = new Problems();
    Optional<Node> root =
        Yaml.read(text.getBytes(StandardCharsets.UTF_8), file.toString(), problems);
    try {
      return root.isEmpty()
          ? Optional.empty()
          : Optional.of(of(file, root.get(), Optional.empty(), editions, this::photoOrNone));
    } catch (ProblemsFound e) {
      return Optional.empty();
    }
  }

  /**
   * The rig on another stay: of a file that is named, or of the one beside the profile; the stay of
   * the profile if there is neither.
   *
   * @throws ProblemsFound if that file has problems
   */
  Profile onStay(Optional<Path> named) throws ProblemsFound, IOException {
    Path beside = file.resolveSibling(name() + ".stay.yaml");
    if (named.isEmpty() && !Files.exists(beside)) {
      return this;
    }
    Path other = named.orElse(beside);
    Problems problems = new Problems();
    Optional<Node> read = Yaml.read(Main.file(other), other.toString(), problems);
    Map<String, Node.Entry> entries = new LinkedHashMap<>(root.entries());
    read.ifPresent(n -> entries.putAll(stay(n, problems)));
    if (!problems.none()) {
      throw new ProblemsFound(problems.sorted());
    }
    return of(file, new Node.Mapping(entries, root.at()), Optional.empty(), editions, photos);
  }

  /** A file of a stay holds the key {@code stay}, as a profile does, and no other. */
  private static Map<String, Node.Entry> stay(Node node, Problems problems) {
    Map<String, Node.Entry> entries = node instanceof Node.Mapping map ? map.entries() : Map.of();
    entries.forEach(
        (key, entry) -> {
          if (!key.equals("stay")) {
            problems.add(
                entry.key(), key, "the file of a stay has no such key", "start with 'stay:'");
          }
        });
    if (entries.isEmpty()) {
      problems.add(node.at(), "", "a stay is keys with values", "start with 'stay:'");
    }
    return entries;
  }

  /** What fills the sheets, with numbers in these units; editions are compared in US units. */
  BinderMaker maker(Amounts units) {
    return units == Amounts.US
        ? maker
        : BinderMaker.of(rig, figures, Wording.english(units), editions.topicCodes());
  }

  /** A photo that an old edition names may be gone; the edition can still be read. */
  private Picture photoOrNone(String name) {
    try {
      return photos.fetch(name);
    } catch (Picture.Refused e) {
      return GONE;
    }
  }

  /** The photos beside a profile; each is read once, however many things it shows. */
  private static Photo.Shelf shelf(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    Map<String, Picture> read = new HashMap<>();
    return name -> {
      Picture picture = read.containsKey(name) ? read.get(name) : Picture.read(folder, name);
      read.put(name, picture);
      return picture;
    };
  }

  /** The file's name without its ending: the folder of its sheets. */
  String name() {
    return name(file);
  }

  private static String name(Path file) {
    return file.getFileName().toString().replaceFirst("\\.ya?ml$", "");
  }
}
