/** YAML to values that know the file, line, column and key they came from; problems as values. */
package org.rigleaf.source;
