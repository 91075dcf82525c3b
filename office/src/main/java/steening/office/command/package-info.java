/** The command line: one class a command. What they say in plain words stands in Help.properties, in both languages. */
package steening.office.command;
