/**
 * SVG from rig and figures: the system map, schematics, panels, plots. Lengths are points, one 72nd
 * of an inch.
 */
package org.rigleaf.drawings;
