using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>A table current with derating factors applied one after another, every step kept.</summary>
/// <remarks>
/// <code>I = I(table) · f1 · f2 · …</code>
/// <para>What is refused (<see cref="FactorRefusedException"/>): a factor of another family of rules, unless it is added with
/// <see cref="WithForeignFactor(DeratingFactor)"/>; a factor for an effect that the table settles itself; a second factor for the same
/// effect; an ambient factor read for another insulation rating or counted from another base ambient; and a factor above one, unless asked for.
/// There is no silent cap: a factor above one is refused or applied in full.</para>
/// <para>Steps are not rounded. A source that rounds between steps can differ in its last digit. Immutable and thread-safe.</para>
/// </remarks>
public sealed partial class DeratedAmpacity
{
    private readonly DeratingStep[] steps;
    private readonly string[] remarks;

    private DeratedAmpacity(TableRating rating, DeratingStep[] steps, string[] remarks)
    {
        Rating = rating;
        this.steps = steps;
        this.remarks = remarks;
    }

    /// <summary>The table current that the steps start from.</summary>
    public TableRating Rating { get; }

    /// <summary>The steps in the order they were applied.</summary>
    public IReadOnlyList<DeratingStep> Steps => [.. steps];

    /// <summary>What a reader must know: a lower column used, a mix of rules, a factor above one, a factor that no rule asks for.</summary>
    public IReadOnlyList<string> Remarks => [.. remarks];

    /// <summary>The allowed current after all steps.</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>The product of all factors; 1 without any.</summary>
    public double CombinedFactor => steps.Aggregate(1.0, (product, step) => product * step.Factor.Value);

    internal double Amperes => steps.Length == 0 ? Rating.Amperes : steps[steps.Length - 1].AfterAmperes;

    /// <summary>Starts from a table current, no factor applied.</summary>
    /// <param name="rating">The table current.</param>
    /// <returns>The allowed current as the table has it.</returns>
    /// <exception cref="ArgumentNullException">The rating is null.</exception>
    public static DeratedAmpacity From(TableRating rating)
    {
        _ = rating ?? throw new ArgumentNullException(nameof(rating));
        string[] remarks = rating.FromLowerColumn
            ? [$"The {Accept.Text(rating.ColumnCelsius)} °C column is used for insulation of {Accept.Text(rating.InsulationCelsius)} °C, the safer neighbour."]
            : [];
        return new DeratedAmpacity(rating, [], remarks);
    }

    /// <summary>Applies a factor of the table's own family of rules that is not above one.</summary>
    /// <param name="factor">The factor.</param>
    /// <returns>The allowed current with the step added.</returns>
    /// <exception cref="ArgumentNullException">The factor is null.</exception>
    /// <exception cref="FactorRefusedException">The factor does not fit; the exception says why.</exception>
    public DeratedAmpacity With(DeratingFactor factor) => With(factor, allowAboveOne: false);

    /// <summary>Applies a factor of the table's own family of rules.</summary>
    /// <param name="factor">The factor.</param>
    /// <param name="allowAboveOne">Whether a factor above one may raise the current above the table, as some rules permit for a cool ambient.</param>
    /// <returns>The allowed current with the step added.</returns>
    /// <exception cref="ArgumentNullException">The factor is null.</exception>
    /// <exception cref="FactorRefusedException">The factor does not fit; the exception says why.</exception>
    public DeratedAmpacity With(DeratingFactor factor, bool allowAboveOne)
    {
        _ = factor ?? throw new ArgumentNullException(nameof(factor));
        return factor.RuleSet == Rating.Table.RuleSet
            ? Add(factor, allowAboveOne)
            : throw Refused(
                FactorRefusal.OtherRuleSet,
                $"The factor is from {factor.Reference}, the current from {Rating.Reference}; each rule set has its own base and its own meaning of a bundle. "
                + $"Use {nameof(WithForeignFactor)} to mix them knowingly.");
    }

    /// <summary>Applies a factor of any family of rules, not above one; a mix is reported in <see cref="Remarks"/>.</summary>
    /// <param name="factor">The factor.</param>
    /// <returns>The allowed current with the step added.</returns>
    /// <exception cref="ArgumentNullException">The factor is null.</exception>
    /// <exception cref="FactorRefusedException">The factor does not fit; the exception says why.</exception>
    public DeratedAmpacity WithForeignFactor(DeratingFactor factor) => WithForeignFactor(factor, allowAboveOne: false);

    /// <summary>Applies a factor of any family of rules; a mix is reported in <see cref="Remarks"/>.</summary>
    /// <param name="factor">The factor.</param>
    /// <param name="allowAboveOne">Whether a factor above one may raise the current above the table.</param>
    /// <returns>The allowed current with the step added.</returns>
    /// <exception cref="ArgumentNullException">The factor is null.</exception>
    /// <exception cref="FactorRefusedException">
    /// The factor does not fit; the exception says why. A foreign ambient factor may be read for a lower insulation rating or a lower base ambient than
    /// the table's (both give less current), never for a higher one.
    /// </exception>
    public DeratedAmpacity WithForeignFactor(DeratingFactor factor, bool allowAboveOne) =>
        Add(factor ?? throw new ArgumentNullException(nameof(factor)), allowAboveOne);

    /// <summary>The allowed current in one line.</summary>
    public override string ToString() => $"{Accept.Text(Amperes)} A ({Rating}; {steps.Length} factors, together {Accept.Text(CombinedFactor)})";

    private DeratedAmpacity Add(DeratingFactor factor, bool allowAboveOne)
    {
        bool foreign = factor.RuleSet != Rating.Table.RuleSet;
        RefuseRepeatedEffect(factor);
        RefuseOtherInsulation(factor, foreign);
        RefuseOtherBase(factor, foreign);
        if (factor.Value > 1 && !allowAboveOne)
        {
            throw Refused(
                FactorRefusal.AboveOne,
                $"The factor {Accept.Text(factor.Value)} ({factor.Condition}) raises the current above the table; allow it explicitly if the installation can never be warmer.");
        }

        return new DeratedAmpacity(Rating, [.. steps, new DeratingStep(factor, foreign, Amperes)], [.. remarks, .. RemarksOn(factor, foreign)]);
    }

    private void RefuseRepeatedEffect(DeratingFactor factor)
    {
        if (Rating.Table.Settles(factor.Kind))
        {
            throw Refused(
                FactorRefusal.SettledByTable,
                $"{Rating.Table.Name} settles {DeratingEffect.Describe(factor.Kind)} itself ({Rating.Table.Conditions}); no further factor of that kind may be applied.");
        }

        DeratingKind effect = DeratingEffect.Of(factor.Kind);
        if (Array.Exists(steps, step => DeratingEffect.Of(step.Factor.Kind) == effect))
        {
            throw Refused(FactorRefusal.CountedTwice, $"A factor for the same effect as {DeratingEffect.Describe(factor.Kind)} has been applied already.");
        }
    }

    private void RefuseOtherInsulation(DeratingFactor factor, bool foreign)
    {
        // An insulation factor is for another rating by its nature.
        if (factor.Kind == DeratingKind.Insulation || factor.InsulationCelsius is not { } insulation || insulation == Rating.ColumnCelsius)
        {
            return;
        }

        bool safe = foreign && insulation < Rating.ColumnCelsius && factor.Value <= 1;
        if (!safe)
        {
            throw Refused(
                FactorRefusal.OtherInsulation,
                $"The factor was read for insulation of {Accept.Text(insulation)} °C, the current for {Accept.Text(Rating.ColumnCelsius)} °C.");
        }
    }

    private void RefuseOtherBase(DeratingFactor factor, bool foreign)
    {
        if (factor.BaseAmbientCelsius is not { } baseAmbient || baseAmbient == Rating.Table.BaseAmbientCelsius)
        {
            return;
        }

        bool safe = foreign && baseAmbient < Rating.Table.BaseAmbientCelsius;
        if (!safe)
        {
            throw Refused(
                FactorRefusal.OtherBaseAmbient,
                $"The factor counts from {Accept.Text(baseAmbient)} °C, the table from {Accept.Text(Rating.Table.BaseAmbientCelsius)} °C.");
        }
    }

    private IEnumerable<string> RemarksOn(DeratingFactor factor, bool foreign)
    {
        if (foreign)
        {
            yield return $"Rules are mixed: the factor {Accept.Text(factor.Value)} for {DeratingEffect.Describe(factor.Kind)} is from {factor.Reference}, the current from {Rating.Reference}."
                + (factor.BundleMeaning.Length == 0 ? "" : $" The factor counts {factor.BundleMeaning}.")
                + $" The table holds for: {Rating.Table.Conditions}.";
        }

        if (!factor.IsRequired)
        {
            yield return $"The factor {Accept.Text(factor.Value)} for {DeratingEffect.Describe(factor.Kind)} is applied as a practice; its rule does not ask for it here ({factor.Condition}).";
        }

        if (factor.Value > 1)
        {
            yield return $"The factor {Accept.Text(factor.Value)} for {DeratingEffect.Describe(factor.Kind)} raises the current above the table ({factor.Condition}).";
        }
    }

    private static FactorRefusedException Refused(FactorRefusal reason, string message) => new(reason, message, "factor");
}
