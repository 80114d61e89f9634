/** SVG from rig and figures: the plan-view system map. Lengths are points, one 72nd of an inch. */
package org.rigleaf.drawings;
