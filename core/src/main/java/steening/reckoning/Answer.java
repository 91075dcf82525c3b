package steening.reckoning;

import steening.language.Phrase;
import steening.quantity.Scale;

/** One thing a reckoning answers, as declared. */
public record Answer(String name, Phrase label, Scale scale) {}
