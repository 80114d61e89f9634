package org.rigleaf.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Upkeep;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Photo;
import org.rigleaf.rig.Rig;
import org.rigleaf.sheets.BinderMaker;
import org.rigleaf.source.Node;
import org.rigleaf.source.Picture;
import org.rigleaf.source.Problems;
import org.rigleaf.source.ProblemsFound;
import org.rigleaf.source.Yaml;

/** A profile read from its file, with its figures and guidance. */
record Profile(Path file, Rig rig, Figures figures, BinderMaker maker) {
  /** Codes of the last issued edition; there is none yet. */
  private static final Map<String, String> NOT_ISSUED = Map.of();

  /**
   * Reads a profile and the log beside it.
   *
   * @throws ProblemsFound if the profile has problems
   * @throws IOException if the file cannot be read
   */
  static Profile read(Path file) throws ProblemsFound, IOException {
    Wording wording = Wording.english();
    Problems problems = new Problems();
    Optional<Node> root = Yaml.read(file, file.toString(), problems);
    Path log = file.resolveSibling(name(file) + ".log.yaml");
    Optional<Node> notes =
        Files.exists(log) ? Yaml.read(log, log.toString(), problems) : Optional.empty();
    if (!problems.none()) {
      throw new ProblemsFound(problems.sorted());
    }
    Rig rig = Rig.read(root.orElseThrow(), notes, NOT_ISSUED, wording.taskIds(), shelf(file));
    Figures figures = Figures.of(rig, Upkeep.intervals(rig, wording));
    return new Profile(file, rig, figures, BinderMaker.of(rig, figures, wording));
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
