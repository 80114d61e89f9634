/**
 * The vehicle as records that refuse nonsense, each bound from the profile by its own {@code read};
 * codes.
 */
package org.rigleaf.rig;
