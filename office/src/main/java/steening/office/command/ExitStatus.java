package steening.office.command;

/** What a command leaves with, for scripts. */
public final class ExitStatus {
  public static final int FINE = 0;
  /** Something failed, or a finding says that the work must stop. */
  public static final int STOPPED = 1;
  public static final int WRONG_USAGE = 2;
  public static final int UNREADABLE = 3;

  private ExitStatus() {}
}
