package steening.bench;

import java.util.Arrays;

/** Times a piece of work over and over, first to warm up, then to count. */
final class Stopwatch {
  private static final double NANOS_A_MILLI = 1e6;

  private Stopwatch() {}

  /** Something to time. */
  interface Work {
    void run() throws Exception;
  }

  /** The median of several runs in milliseconds, after as many to warm up. */
  static double median(int runs, Work work) throws Exception {
    for (int i = 0; i < runs; i++) work.run();
    double[] times = new double[runs];
    for (int i = 0; i < runs; i++) {
      long start = System.nanoTime();
      work.run();
      times[i] = (System.nanoTime() - start) / NANOS_A_MILLI;
    }
    Arrays.sort(times);
    return times[runs / 2];
  }
}
