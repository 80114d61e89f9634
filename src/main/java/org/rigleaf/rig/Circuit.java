package org.rigleaf.rig;

import java.util.List;

/** A circuit with a name on the panel: what limits it and what hangs on it. */
public interface Circuit {
  /** Its path in the profile. */
  String id();

  /** The panel's own name. */
  String name();

  /** Amperes at which it opens. */
  Fact rating();

  /** What it feeds, as the keeper mentions it. */
  List<Reference> feeds();
}
