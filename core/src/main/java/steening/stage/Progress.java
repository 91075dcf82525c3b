package steening.stage;

/** How far a stage is. */
public enum Progress {
  NOT_BEGUN,
  UNDER_WAY,
  DONE
}
