package org.rigleaf.cli;

import org.rigleaf.sheets.Paper;

/** A finished document: its HTML and the paper it is printed on. */
record Made(String html, Paper paper) {}
