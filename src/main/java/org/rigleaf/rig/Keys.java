package org.rigleaf.rig;

import java.util.Optional;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;

/**
 * The keys of one group of the profile. Whatever is asked for is a key of the format; whatever is
 * written but never asked for is a problem. Every answer is kept by its path, so that wording and
 * drawings can speak of it.
 */
abstract class Keys {
  final Fields fields;
  final String schemaPath; // the path without the items' own parts: waste.gray.handle
  final Reading reading;

  Keys(Fields fields, String schemaPath, Reading reading) {
    this.fields = fields;
    this.schemaPath = schemaPath;
    this.reading = reading;
  }

  /** Path of this group, items' own parts included. */
  public String path() {
    return fields.path();
  }

  Fact keep(String key, Fact fact) {
    reading.facts.put(fields.pathOf(key), fact);
    return fact;
  }

  Optional<Node.Text> text(String key) {
    mark(key);
    return unmarked(key);
  }

  Optional<Node.Text> unmarked(String key) {
    return fields.text(key);
  }

  void mark(String key) {
    if (reading.schema || fields.has(key)) {
      reading.traits.add(trait(key));
    }
  }

  String trait(String key) {
    return schemaPath.isEmpty() ? key : schemaPath + "." + key;
  }
}
