package org.rigleaf.rig;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rigleaf.source.Problems;

/**
 * What one reading of a profile gathers besides the records: facts by path, traits, gear,
 * references, problems.
 */
final class Reading {
  final Problems problems = new Problems();
  final Map<String, Fact> facts =
      new LinkedHashMap<>(); // by path, the unknown ones of present sections included
  final Map<String, String> texts =
      new LinkedHashMap<>(); // names, places in words, switches: by path
  final Set<String> traits = new LinkedHashSet<>();
  final List<Gear> gear = new ArrayList<>();
  final List<Reference> references = new ArrayList<>();
  final Map<String, String> names =
      new LinkedHashMap<>(); // id -> name, of everything a reference may mean
  final List<Photo> photos = new ArrayList<>();
  final Map<String, List<String>> choices =
      new LinkedHashMap<>(); // of a dry run: the closed list of values, by key
  final Photo.Shelf shelf;
  final boolean schema; // true: a dry run that lists every key the format knows

  Reading(boolean schema, Photo.Shelf shelf) {
    this.schema = schema;
    this.shelf = shelf;
  }
}
