/** Pages and forms: (request, journals) in, (page, new entries) out. Computes nothing itself. */
package steening.page;
