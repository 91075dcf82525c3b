package steening.office.command;

import picocli.CommandLine.IVersionProvider;

/** The version the program was packed with. */
public final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    String version = Version.class.getPackage().getImplementationVersion();
    return new String[] {"Steening " + (version == null ? "(not packed)" : version)};
  }
}
