package org.rigleaf.sheets;

import java.util.List;

/**
 * All that the templates of a binder may see.
 *
 * @param rig name of the rig
 * @param kind kind of the rig, as printed
 * @param draft the word for an edition that was not issued; empty for an issued one
 * @param edition the edition
 * @param tabs the sections, in the order of their thumb tabs
 * @param topics the topics, in order; cover and contents are made by the template
 * @param contacts whom to call
 * @param paper what it is printed on
 * @param cover what the cover says
 */
public record Binder(
    String rig,
    String kind,
    String draft,
    Edition edition,
    List<Tab> tabs,
    List<Topic> topics,
    List<Contact> contacts,
    Paper paper,
    Cover cover) {
  /** Copies the lists. */
  public Binder {
    tabs = List.copyOf(tabs);
    topics = List.copyOf(topics);
    contacts = List.copyOf(contacts);
  }
}
