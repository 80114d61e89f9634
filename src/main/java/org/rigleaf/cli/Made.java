package org.rigleaf.cli;

import java.util.Optional;
import org.rigleaf.sheets.CardSheet;
import org.rigleaf.sheets.Paper;

/**
 * A finished document: its HTML and what it is printed on.
 *
 * @param cards how cards stand on the paper; empty for a document of whole pages
 */
record Made(String html, Paper paper, Optional<CardSheet> cards) {
  /** A document of whole pages. */
  Made(String html, Paper paper) {
    this(html, paper, Optional.empty());
  }
}
