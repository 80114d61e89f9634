package org.rigleaf.bench;

import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Guide;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;

/** Milliseconds that a rig of the demo fleet takes, in a program that has run for a while. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class EachRig {
  /** The profile's file name without its ending; {@link #main} puts every one in. */
  @Param("sedge")
  public String name;

  private Rig rig;

  /** Runs all benchmarks for every profile of the fleet. */
  public static void main(String[] args) throws RunnerException {
    new Runner(
            new OptionsBuilder()
                .include(EachRig.class.getSimpleName())
                .param("name", TestRigs.fleet().toArray(String[]::new))
                .build())
        .run();
  }

  /** Reads the profile; reading is not measured. */
  @Setup
  public void read() {
    rig = TestRigs.demo(name);
  }

  /** Every figure of the register. */
  @Benchmark
  public Figures figures() {
    return Figures.of(rig);
  }

  /** Every figure, and all steps and cautions with their words filled in. */
  @Benchmark
  public Guide figuresAndGuide() {
    return new Guide(rig, Figures.of(rig), Wording.english(), Map.of());
  }
}
