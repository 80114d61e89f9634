package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.List;
import org.rigleaf.drawings.QrCode;
import org.rigleaf.guidance.Reminder;
import org.rigleaf.guidance.Words;

/**
 * A task on one card or several: what is exchanged as a whole, since another size of card cuts it
 * elsewhere.
 *
 * @param rig name of the rig
 * @param id stable
 * @param code as printed
 * @param title what is reached by it
 * @param emergency set apart
 * @param mode {@code read-do}, {@code do-confirm}, or {@code look-up} for facts
 * @param qr the page of the rig to scan; none on an emergency card
 * @param page code of the topic that tells the whole; empty where the card does
 * @param call whom to call
 * @param cards in order
 */
public record CardTask(
    String rig,
    String id,
    String code,
    String title,
    boolean emergency,
    String mode,
    List<QrCode> qr,
    String page,
    Words call,
    List<Card> cards) {
  /** Copies the lists. */
  public CardTask {
    qr = List.copyOf(qr);
    cards = List.copyOf(cards);
  }

  /** The same task on its cards. */
  CardTask with(List<List<Part>> parts, List<Reminder> reminders, Words done) {
    List<Card> made = new ArrayList<>();
    for (List<Part> on : parts) {
      int number = made.size() + 1;
      List<Reminder> head = number == 1 ? reminders : List.of();
      made.add(new Card(number, head, on, number == parts.size() ? done : Words.NONE));
    }
    return new CardTask(rig, id, code, title, emergency, mode, qr, page, call, made);
  }

  /**
   * One side of one card.
   *
   * @param number 1 for the first
   * @param reminders cautions at its head
   * @param parts what stands on it
   * @param done the state at the end; empty on a card that another follows
   */
  public record Card(int number, List<Reminder> reminders, List<Part> parts, Words done) {
    /** Copies the lists. */
    public Card {
      reminders = List.copyOf(reminders);
      parts = List.copyOf(parts);
    }
  }

  /** Lines under a title, which may be empty. */
  public record Part(String title, List<CardLine> lines) {
    /** Copies the list. */
    public Part {
      lines = List.copyOf(lines);
    }
  }
}
