package org.rigleaf.rig;

import java.util.Optional;

/** Whom to call, for what, when. */
public record Contact(
    String id,
    Optional<String> purpose,
    Optional<String> name,
    Optional<String> phone,
    Optional<String> hours) {
  static Contact read(Section s) {
    return new Contact(s.path(), s.name(), s.words("name"), s.words("phone"), s.words("hours"));
  }
}
