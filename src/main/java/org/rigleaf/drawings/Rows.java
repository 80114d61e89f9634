package org.rigleaf.drawings;

/** Stacks labels in a column: isotonic least squares by pooling neighbors that would overlap. */
final class Rows {
  private Rows() {}

  /** Middles of rows so tall, in this order, as near to the wanted heights as the lane allows. */
  static double[] place(double[] wanted, Leaders.Lane lane, double[] tall) {
    int n = wanted.length;
    double[] offset = new double[n];
    double total = 0;
    for (int i = 0; i < n; i++) {
      offset[i] = total + tall[i] / 2;
      total += tall[i];
    }
    double[] sum = new double[n];
    int[] count = new int[n];
    int blocks = 0;
    for (int i = 0; i < n; i++) {
      sum[blocks] = wanted[i] - offset[i];
      count[blocks++] = 1;
      while (blocks > 1
          && sum[blocks - 2] / count[blocks - 2] >= sum[blocks - 1] / count[blocks - 1]) {
        sum[blocks - 2] += sum[blocks - 1];
        count[blocks - 2] += count[--blocks];
      }
    }
    double last = Math.max(lane.top(), lane.bottom() - total);
    double[] heights = new double[n];
    for (int b = 0, i = 0; b < blocks; b++) {
      double start = Plan.clamp(sum[b] / count[b], lane.top(), last);
      for (int j = 0; j < count[b]; j++, i++) {
        heights[i] = start + offset[i];
      }
    }
    return heights;
  }
}
