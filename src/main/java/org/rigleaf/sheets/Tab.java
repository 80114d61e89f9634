package org.rigleaf.sheets;

/**
 * A section that the binder opens at by its thumb tab.
 *
 * @param key stable key
 * @param letter printed on the tab
 * @param title in words
 */
public record Tab(String key, String letter, String title) {}
