/** The core behind one exported function, compiled to WebAssembly. Calls no interface of the browser. */
package steening.phone;
