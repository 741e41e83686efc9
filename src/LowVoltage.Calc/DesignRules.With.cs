using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc;

/// <content>Varied by calls: for languages without object initialisers of <c>init</c> properties. Start from a preset.</content>
public sealed partial class DesignRules
{
    /// <summary>The same rules under another name.</summary>
    /// <param name="name">See <see cref="Name"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The argument is null.</exception>
    public DesignRules WithName(string name) => new(this) { Name = name };

    /// <summary>The same rules with other wires to choose from.</summary>
    /// <param name="conductors">See <see cref="Conductors"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The argument is null.</exception>
    public DesignRules WithConductors(ConductorSeries conductors) => new(this) { Conductors = conductors };

    /// <summary>The same rules with other fuses to choose from.</summary>
    /// <param name="fuses">See <see cref="Fuses"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The argument is null.</exception>
    public DesignRules WithFuses(FuseSeries fuses) => new(this) { Fuses = fuses };

    /// <summary>The same rules with another source of ratings.</summary>
    /// <param name="ampacity">See <see cref="Ampacity"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The argument is null.</exception>
    public DesignRules WithAmpacity(AmpacityBasis ampacity) => new(this) { Ampacity = ampacity };

    /// <summary>The same rules with another allowance for the drop.</summary>
    /// <param name="dropLimit">See <see cref="DropLimit"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The argument is null.</exception>
    public DesignRules WithDropLimit(DropLimit dropLimit) => new(this) { DropLimit = dropLimit };

    /// <summary>The same rules with another practice of choosing fuses.</summary>
    /// <param name="fusePractice">See <see cref="FusePractice"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The argument is null.</exception>
    public DesignRules WithFusePractice(FusePractice fusePractice) => new(this) { FusePractice = fusePractice };

    /// <summary>The same rules with another smallest section on mechanical grounds.</summary>
    /// <param name="minimumSection">See <see cref="MinimumSection"/>.</param>
    /// <param name="minimumSectionReference">See <see cref="MinimumSectionReference"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The section is outside its range.</exception>
    public DesignRules WithMinimumSection(Area minimumSection, Reference minimumSectionReference) =>
        new(this) { MinimumSection = minimumSection, MinimumSectionReference = minimumSectionReference };
}
