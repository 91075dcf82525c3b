package steening.stage.test.gauge;

import steening.field.Kind;
import steening.field.QuantityField;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.well.Well;

/** The rate as it was measured: how, and what was read. */
public final class RateEntry {
  static final QuantityField MINUTES = QuantityField.of(
          "minutes", Scale.MINUTES,
          Phrase.of("minutes since the pump was started", "minutos desde el arranque de la bomba"), "10 min", "10 min")
      .between("0 min", "100000 min").usually("0 min", "4320 min").optional();

  public static final Kind KIND = Kind.of(
          "rate-measured", Phrase.of("Measured rate", "Gasto medido"),
          Way.FIELD, MINUTES, BucketRate.VESSEL.optional(), BucketRate.TIMES.optional(), VNotchWeir.ANGLE.optional(),
          VNotchWeir.HEAD.optional(), RectangularWeir.CREST.optional(), OrificeRate.PIPE.optional(),
          OrificeRate.ORIFICE.optional(), OrificeRate.HEAD.optional(), OrificeRate.OWN_K, PipeJet.REACH.optional(),
          PipeJet.DROP.optional(), MeterRate.FIRST.optional(), MeterRate.SECOND.optional(), MeterRate.TIME.optional(),
          MeterRate.MARK)
      .carrying(Way.FIELD, BucketRate.VESSEL, VNotchWeir.ANGLE, RectangularWeir.CREST, OrificeRate.PIPE,
          OrificeRate.ORIFICE, OrificeRate.OWN_K, PipeJet.DROP, MeterRate.MARK)
      .seldom(VNotchWeir.ANGLE, VNotchWeir.HEAD, RectangularWeir.CREST, OrificeRate.PIPE, OrificeRate.ORIFICE,
          OrificeRate.HEAD, OrificeRate.OWN_K, PipeJet.REACH, PipeJet.DROP, MeterRate.FIRST, MeterRate.SECOND,
          MeterRate.TIME, MeterRate.MARK);

  private RateEntry() {}

  public static Well with(Well well, Entry entry) {
    MeasuredRates.Measured measured = new MeasuredRates.Measured(entry.body(), entry.happenedAt(), entry.id());
    return well.with(MeasuredRates.PART, well.get(MeasuredRates.PART).with(measured));
  }
}
