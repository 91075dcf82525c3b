package steening.stage;

/** How far a stage is. */
public enum Progress {
  /** There is nothing for it to be done on. */
  NOT_NEEDED,
  NOT_BEGUN,
  UNDER_WAY,
  DONE
}
