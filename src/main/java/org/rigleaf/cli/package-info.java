/** Reads the command line, runs the stages, turns problems into messages and exit codes. */
package org.rigleaf.cli;
