/**
 * Which documents exist, what a template may see, topics, digests, editions, comparison, and the
 * one place that knows paper.
 */
package org.rigleaf.sheets;
