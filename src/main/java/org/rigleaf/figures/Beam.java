package org.rigleaf.figures;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Weights on a beam that rests on two supports; distances run back from the front end.
 *
 * @param items the weights
 * @param front the working of the front support's place, empty if that is the front end
 * @param frontFeet that place
 * @param span the working of the distance from the front support back to the rear one
 * @param spanFeet that distance
 */
record Beam(
    List<Aboard.Item> items,
    String front,
    ToDoubleFunction<Inputs> frontFeet,
    String span,
    ToDoubleFunction<Inputs> spanFeet) {

  /** What the two supports carry of the weights, pounds. */
  record Load(double frontPounds, double rearPounds) {}

  Load load(Inputs in) {
    double from = frontFeet.applyAsDouble(in);
    double span = spanFeet.applyAsDouble(in);
    double pounds = 0;
    double moment = 0;
    for (Aboard.Item item : items) {
      double weight = item.pounds().applyAsDouble(in);
      pounds += weight;
      moment += weight * (item.spot().feet().applyAsDouble(in) - from);
    }
    double rear = rearPounds(moment, span);
    return new Load(pounds - rear, rear);
  }

  /** What the rear support carries, to be added to another weight; empty without weights. */
  String rearFormula() {
    return items.isEmpty() ? "" : " + " + moments();
  }

  /** The same for the front support: all the weights, less the rear one's part. */
  String frontFormula() {
    return items.isEmpty()
        ? ""
        : items.stream().map(i -> " + " + i.formula()).collect(Collectors.joining())
            + " − "
            + moments();
  }

  private String moments() {
    String sum =
        items.stream()
            .map(i -> i.formula() + " × " + lever(i.spot().formula()))
            .collect(Collectors.joining(" + "));
    return "(" + sum + ") ÷ " + span;
  }

  private String lever(String place) {
    return front.isEmpty() ? place : "(" + place + " − " + front + ")";
  }

  /**
   * Pounds that the rear support carries: below zero if the weights tip the beam forward.
   *
   * @param momentFootPounds pounds times feet behind the front support, summed over all weights
   * @throws IllegalArgumentException for supports in one place
   */
  static double rearPounds(double momentFootPounds, double spanFeet) {
    if (!(spanFeet > 0)) {
      throw new IllegalArgumentException("no span between the supports: " + spanFeet);
    }
    return momentFootPounds / spanFeet;
  }
}
