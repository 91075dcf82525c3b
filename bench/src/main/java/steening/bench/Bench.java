package steening.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Runs every measurement and prints one table. Arguments: the program's jar and its archive of classes. */
public final class Bench {
  private Bench() {}

  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createTempDirectory("steening-bench");
    List<Row> rows = new ArrayList<>();
    rows.add(FoldBench.measure());
    rows.addAll(GrowthBench.measure());
    rows.add(ReportBench.measure());
    rows.add(InsertBench.measure(folder));
    rows.add(StartBench.measure(folder, Path.of(arguments[0]), Path.of(arguments[1])));
    System.out.println("Java " + Runtime.version() + ", " + Runtime.getRuntime().availableProcessors() + " cores, "
        + System.getProperty("os.name") + " " + System.getProperty("os.arch"));
    System.out.println();
    System.out.println("| measured | ours | held against | theirs | ratio (less is better) |");
    System.out.println("|---|---|---|---|---|");
    for (Row row : rows) System.out.println(row.printed());
  }
}
