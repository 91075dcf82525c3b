/** Wells, findings, reckonings and their answers as JSON, for the command line and the HTTP interface alike. */
package steening.json;
