using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>Design problems: one circuit, wire and fuse to be chosen; each topic asks for what belongs to it in the circuit chosen.</summary>
internal static class DesignProblems
{
    internal static Func<ProblemDraft, bool> For(ProblemTopic topic) => draft => Write(draft, topic);

    private static bool Write(ProblemDraft d, ProblemTopic topic)
    {
        if (DesignCircuit.Draw(d, topic == ProblemTopic.ChassisReturn) is not { } circuit)
        {
            return false;
        }

        d.Warn("A plan on paper. Real wiring follows the rules of its place and is looked over by somebody who answers for it.");
        return topic switch
        {
            ProblemTopic.SmallestSize => Size(d, circuit),
            ProblemTopic.FuseChoice => Fuse(d, circuit),
            ProblemTopic.AmpacityDerating => Derated(d, circuit),
            ProblemTopic.FuseOpeningTime => Time(d, circuit),
            ProblemTopic.WireGeometry => Density(d, circuit),
            ProblemTopic.AdiabaticHeating => Heat(d, circuit),
            ProblemTopic.WireResistance or ProblemTopic.SeriesResistance => Resistance(d, circuit),
            ProblemTopic.ParallelResistance => Doubled(d, circuit),
            ProblemTopic.TemperatureCorrection => Hot(d, circuit),
            ProblemTopic.Power => Lost(d, circuit),
            ProblemTopic.BatteryEnergy => Energy(d, circuit),
            ProblemTopic.VoltageAtLoad => AtLoad(d, circuit),
            ProblemTopic.BatteryResistance => WithBattery(d, circuit),
            ProblemTopic.ProspectiveCurrent => Prospective(d, circuit),
            ProblemTopic.JointDrop => WithJoints(d, circuit),
            ProblemTopic.LampVoltage => Percent(d, circuit),
            _ => Drop(d, circuit),
        };
    }

    private static bool Size(ProblemDraft d, DesignCircuit c)
    {
        d.AskStandard("Which size do you choose?", d.Choose("the size chosen", "S", c.Right.Row.Value, d.SizeUnit, null, "The smallest that meets both conditions."));
        return Finish(d, c, choice => choice.Row.Value);
    }

    private static bool Fuse(ProblemDraft d, DesignCircuit c)
    {
        Symbol rating = d.Choose("the fuse chosen", "I_f", c.Rating.Value, "A", FuseSeries.RoadVehicleBlade.Reference, "As found above; the wire is chosen for it.");
        d.AskStandard("Which fuse do you choose?", rating);
        d.Wrong(Mistake.LoadingForgotten, FuseProblems.Rating(c.Right.Amperes));
        d.Wrong(Mistake.LoadingMultiplied, FuseProblems.Rating(c.Right.Amperes * 0.8));
        d.Wrong(Mistake.LoadingTwice, FuseProblems.Rating(c.Right.Amperes / 0.64));
        d.Wrong(Mistake.WattsForAmperes, FuseProblems.Rating(c.P.Value / 0.8));
        d.Wrong(Mistake.RoundedDown, FuseSeries.RoadVehicleBlade.NextSmaller(Make.A(rating.Value))?.Current.Amperes ?? double.NaN);
        d.Wrong(Mistake.TooLargeByOne, FuseSeries.RoadVehicleBlade.NextLarger(Make.A(rating.Value))?.Current.Amperes ?? double.NaN);
        d.Wrong(Mistake.FuseForTheMost, FuseProblems.Rating(c.TableAmperes.Value));
        return true;
    }

    private static bool Derated(ProblemDraft d, DesignCircuit c)
    {
        double table = c.TableAmperes.Value, f = c.Factor.Value;
        d.Ask("What current may the wire that you choose carry there?", d.Step("the current it may carry", "I_z", c.TableAmperes * c.Factor.Symbol, "A", null, "The table's current, once derated."));
        d.Wrong(Mistake.DeratingForgotten, table);
        d.Wrong(Mistake.DeratingInverted, table / f);
        d.Wrong(Mistake.DeratingComplement, table * (1 - f));
        d.Wrong(Mistake.DeratingTwice, table * f * f);
        return Finish(d, c, choice => (double)choice.Row.Amperes * f);
    }

    private static bool Time(ProblemDraft d, DesignCircuit c)
    {
        d.Say("In such a fuse an overload of twice the rating lasts 0.15 s to 5 s, of 3.5 times the rating 0.04 s to 0.5 s, of 6 times the rating 0.02 s to 0.1 s; between, the longest time lies on a straight line over the current when both axes are logarithmic.");
        DrawnGiven m = d.Give("overload as a multiple of the rating of the fuse chosen", "m", d.Random.OnGrid(2.25m, 3.25m, 0.25m), "");
        d.Say($"A fault in the load drives {m} times the rating of your fuse through the wire.");
        Symbol m1 = d.Choose("the multiple below", "m_1", 2, "", null, "From the statement."), t1 = d.Choose("its longest time", "t_1", 5, "s", null, "From the statement.");
        Symbol m2 = d.Choose("the multiple above", "m_2", 3.5, "", null, "From the statement."), t2 = d.Choose("its longest time", "t_2", 0.5, "s", null, "From the statement.");
        Symbol slope = d.Step("the slope on logarithmic axes", "n", Formula.Logarithm(t2 / t1) / Formula.Logarithm(m2 / m1), "", null, "Change of the logarithm of time over that of current.");
        FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(Make.A(c.Right.Rating));
        double longest = fuse.OperatingTime(Make.A(c.Right.Rating * m.Value)).Longest.Seconds;
        d.Ask("How long may your fuse take at most to open?", d.Step("the longest time", "t", t1 * Formula.Power(m.Symbol / m1, slope), longest, "s", OperatingTimeLimits.RoadVehicleBlade.Reference, "The same for every rating of the series."), 3, 0.02 * longest);
        d.Wrong(Mistake.LinearForLogarithmic, 5 + (-4.5 * (m.Value - 2) / 1.5));
        d.Wrong(Mistake.NotInterpolated, 5);
        d.Wrong(Mistake.NeighbouringGate, 0.5);
        d.Wrong(Mistake.LeastForLongest, fuse.OperatingTime(Make.A(c.Right.Rating * m.Value)).Least.Seconds);
        return true;
    }

    private static bool Density(ProblemDraft d, DesignCircuit c)
    {
        Symbol s = d.Choose("section of the size chosen", "S", (double)c.Right.Row.Section, "mm²", null, "From the same row.");
        d.Ask("What current density does the load cause in the wire that you choose?", d.Step("the current density", "J", c.Current / s, "A/mm²", null, "Current over section."));
        d.Wrong(Mistake.Inverted, (double)c.Right.Row.Section / c.Right.Amperes);
        return Finish(d, c, choice => choice.Amperes / (double)choice.Row.Section) && d.Answer.Value <= 8;
    }

    private static bool Heat(ProblemDraft d, DesignCircuit c)
    {
        DrawnGiven k = d.Give("k of copper with PVC", "k_c", 115, "A·√s/mm²");
        DrawnGiven i = d.Give("short-circuit current", "I_p", (decimal)(150 + (10 * d.Random.Next(60))), "A");
        d.Say($"A short circuit at the fuse would drive {i} through the wire, which withstands I²·t = k²·S² with k = {k}.");
        d.Warn(FuseProblems.Paper);
        Symbol s = d.Choose("section of the size chosen", "S", (double)c.Right.Row.Section, "mm²", null, "From the same row.");
        Symbol t = d.Step("the time", "t", Formula.Square(k.Symbol) * Formula.Square(s) / Formula.Square(i.Symbol), "s", Heating.AdiabaticHeating.Reference, "The equation solved for the time.");
        d.Ask("Within what time must the fuse open, to save the wire that you choose?", t);
        d.Wrong(Mistake.SquareForgotten, k.Value * s.Value / i.Value);
        d.Wrong(Mistake.SectionNotSquared, t.Value / s.Value);
        return Finish(d, c, choice => t.Value * Math.Pow((double)choice.Row.Section / s.Value, 2)) && t.Value is > 0.02 and < 5;
    }

    private static bool Resistance(ProblemDraft d, DesignCircuit c)
    {
        d.Ask("What resistance has the way out and back with the wire that you choose?", c.StepResistance());
        return Finish(d, c, choice => choice.Ohms);
    }

    private static bool Doubled(ProblemDraft d, DesignCircuit c)
    {
        d.Say("Later a second, equal pair of wires is laid beside the first and connected to it at both ends.");
        Symbol r = c.StepResistance();
        double half = ResistorNetwork.Parallel(Make.Ohm(r.Value), Make.Ohm(r.Value)).Ohms;
        d.Ask("What resistance out and back have the two pairs together, with the wire that you choose?", d.Step("the resistance of both pairs", "R_p", r / 2, half, "Ω", OhmsLaw.Reference, "Two equal resistances side by side: half of one."));
        d.Wrong(Mistake.SeriesForParallel, 2 * r.Value);
        return Finish(d, c, choice => choice.Ohms / 2);
    }

    private static bool Hot(ProblemDraft d, DesignCircuit c)
    {
        DrawnGiven alpha = d.Give("temperature coefficient of copper, from 20 °C", "α", 0.00393m, "1/K");
        DrawnGiven theta = d.Give("temperature of the wire", "θ", d.DrawTemperature(50, 70), d.TemperatureUnit);
        d.Say($"In service the wire warms to {theta}; copper's resistance changes by {alpha}, counted from 20 °C.");
        d.SayConversion();
        Symbol r = c.StepResistance(), hot = d.InCelsius(theta, "θ_x");
        double value = Conductors.TemperatureCorrection.ResistanceAt(Make.Ohm(r.Value), Make.Celsius(20), Make.Celsius(hot.Value), alpha.Value, Make.Celsius(20)).Ohms;
        d.Ask("What resistance out and back has the wire that you choose, hot?", d.Step(
            "the resistance, hot", "R_x", r * (1 + (alpha.Symbol * (hot - 20))), value, "Ω", Conductors.ConductorMaterial.Copper.Reference, "Resistance rises in a straight line with temperature."));
        d.Wrong(Mistake.ColdForHot, r.Value);
        d.Wrong(Mistake.TemperatureSign, (2 * r.Value) - value);
        d.Wrong(Mistake.ReferenceTemperatureForgotten, r.Value * (1 + (alpha.Value * hot.Value)));
        return Finish(d, c, choice => value * choice.Ohms / r.Value);
    }

    private static bool Lost(ProblemDraft d, DesignCircuit c)
    {
        Symbol r = c.StepResistance();
        double watts = (double)VoltageDrop.Lost(Make.A(c.Right.Amperes), Make.Ohm(r.Value)).Watts;
        d.Ask("How many watts are lost in the wire that you choose?", d.Step("the power lost", "P_v", Formula.Square(c.Current) * r, watts, "W", OhmsLaw.Reference, "Heat in a resistance is I²·R."));
        d.Wrong(Mistake.SquareForgotten, c.Right.Amperes * r.Value);
        d.Wrong(Mistake.SupplyAcrossWire, c.U.Value * c.U.Value / r.Value);
        return Finish(d, c, choice => choice.Amperes * choice.Amperes * choice.Ohms);
    }

    private static bool Energy(ProblemDraft d, DesignCircuit c)
    {
        DrawnGiven t = d.Give("hours a day", "t", d.Random.OnGrid(1m, 12m, 0.5m), "h");
        d.Say($"The load runs {t} a day.");
        Symbol r = c.StepResistance();
        double lost = ElectricalEnergy.Lost(Make.A(c.Right.Amperes), Make.Ohm(r.Value), UnitsNet.Duration.FromHours(t.Value)).WattHours;
        d.Ask("How many watt-hours a day are lost in the wire that you choose?", d.Step("the energy lost in a day", "W_v", Formula.Square(c.Current) * r * t.Symbol, lost, "Wh", OhmsLaw.Reference, "I²·R for that time."));
        d.Wrong(Mistake.SquareForgotten, c.Right.Amperes * r.Value * t.Value);
        d.Wrong(Mistake.WattsForAmperes, c.P.Value * c.P.Value * r.Value * t.Value);
        return Finish(d, c, choice => choice.Amperes * choice.Amperes * choice.Ohms * t.Value);
    }

    private static bool AtLoad(ProblemDraft d, DesignCircuit c)
    {
        Symbol r = c.StepResistance();
        double volts = InternalResistance.TerminalVoltage(Make.V(c.U.Value), Make.Ohm(r.Value), Make.A(c.Right.Amperes)).Volts;
        d.Ask("What voltage reaches the load with the wire that you choose?", d.Step("the voltage at the load", "U_x", c.U.Symbol - (c.Current * r), volts, "V", OhmsLaw.Reference, "The supply less the drop."), 4, 0.0006 * volts);
        d.Wrong(Mistake.DropForVolts, c.U.Value - volts);
        d.Wrong(Mistake.DropAdded, (2 * c.U.Value) - volts);
        d.Wrong(Mistake.OneLeadOnly, (c.U.Value + volts) / 2);
        return Finish(d, c, choice => c.U.Value - (choice.Amperes * choice.Ohms));
    }

    private static bool WithBattery(ProblemDraft d, DesignCircuit c)
    {
        DrawnGiven inner = d.Give("internal resistance of the battery", "R_i", d.Random.OnGrid(4m, 24m, 1m), "mΩ");
        d.Say($"The battery that feeds it has {U(c)} at rest and an internal resistance of {inner}.");
        Symbol r = c.StepResistance();
        double all = r.Value + (inner.Value / 1000), volts = OhmsLaw.FromCurrentAndResistance(Make.A(c.Right.Amperes), Make.Ohm(all)).Voltage.Volts;
        d.Ask("By how many volts does the load's voltage lie below the battery's voltage at rest, with the wire that you choose?", d.Step(
            "the drop in battery and wires", "ΔU", c.Current * (r + (inner.Symbol / 1000)), volts, "V", OhmsLaw.Reference, "Battery and wires are in series."));
        d.Wrong(Mistake.SourceForgotten, c.Right.Amperes * r.Value);
        d.Wrong(Mistake.WireResistanceForgotten, c.Right.Amperes * inner.Value / 1000);
        d.Wrong(Mistake.PowerForDrop, c.Right.Amperes * volts);
        return Finish(d, c, choice => choice.Amperes * (choice.Ohms + (inner.Value / 1000)));
    }

    private static bool Prospective(ProblemDraft d, DesignCircuit c)
    {
        DrawnGiven inner = d.Give("internal resistance of the battery", "R_i", d.Random.OnGrid(4m, 24m, 1m), "mΩ");
        d.Say($"The battery that feeds it has {U(c)} and an internal resistance of {inner}.");
        d.Warn(FuseProblems.Paper);
        Symbol r = c.StepResistance();
        double amperes = OhmsLaw.FromVoltageAndResistance(Make.V(c.U.Value), ResistorNetwork.Series(Make.Ohm(r.Value), Make.Milliohm(inner.Value))).Current.Amperes;
        d.Ask("What current would a short circuit at the load draw through the cold wire that you choose?", d.Step(
            "the prospective current", "I_p", c.U.Symbol / (r + (inner.Symbol / 1000)), amperes, "A", OhmsLaw.Reference, "Battery and wires are in series."));
        d.Wrong(Mistake.SourceForgotten, c.U.Value / r.Value);
        d.Wrong(Mistake.WireResistanceForgotten, c.U.Value / inner.Value * 1000);
        d.Wrong(Mistake.OneLeadOnly, c.U.Value / ((r.Value / 2) + (inner.Value / 1000)));
        return Finish(d, c, choice => c.U.Value / (choice.Ohms + (inner.Value / 1000)));
    }

    private static bool WithJoints(ProblemDraft d, DesignCircuit c)
    {
        DrawnGiven n = d.Give("number of joints", "n", (decimal)(3 + d.Random.Next(6)), "");
        DrawnGiven joint = d.Give("resistance of one joint", "R_1", d.Random.OnGrid(0.5m, 3m, 0.5m), "mΩ");
        d.Say($"Not counted so far are {n} joints of {joint} each.");
        Symbol r = c.StepResistance();
        double joints = n.Value * joint.Value / 1000, volts = OhmsLaw.FromCurrentAndResistance(Make.A(c.Right.Amperes), Make.Ohm(r.Value + joints)).Voltage.Volts;
        d.Ask("How many volts are lost in the wire that you choose and its joints together?", d.Step(
            "the drop with the joints", "ΔU", c.Current * (r + (n.Symbol * joint.Symbol / 1000)), volts, "V", OhmsLaw.Reference, "Wire and joints are in series."));
        d.Wrong(Mistake.OneJointOnly, c.Right.Amperes * (r.Value + (joint.Value / 1000)));
        d.Wrong(Mistake.PartForgotten, c.Right.Amperes * r.Value);
        d.Wrong(Mistake.PowerForDrop, c.Right.Amperes * volts);
        return Finish(d, c, choice => choice.Amperes * (choice.Ohms + joints));
    }

    private static bool Percent(ProblemDraft d, DesignCircuit c)
    {
        Symbol r = c.StepResistance();
        d.Ask("How many per cent of the voltage are lost in the wire that you choose?", d.Step("the drop of the voltage", "p_x", c.Current * r / c.U.Symbol * 100, "%", OhmsLaw.Reference, "The drop over the voltage."));
        d.Wrong(Mistake.DropInVolts, c.Right.Amperes * r.Value);
        return Finish(d, c, choice => choice.Amperes * choice.Ohms / c.U.Value * 100);
    }

    private static bool Drop(ProblemDraft d, DesignCircuit c)
    {
        Symbol r = c.StepResistance();
        double volts = OhmsLaw.FromCurrentAndResistance(Make.A(c.Right.Amperes), Make.Ohm(r.Value)).Voltage.Volts;
        d.Ask("How many volts are lost with the wire that you choose?", d.Step("the voltage drop", "ΔU", c.Current * r, volts, "V", OhmsLaw.Reference, "Ohm's law for the way."));
        d.Wrong(Mistake.PowerForDrop, c.Right.Amperes * volts);
        d.Wrong(Mistake.OneLeadOnly, volts / 2);
        return Finish(d, c, choice => choice.Amperes * choice.Ohms);
    }

    // The same question asked of the wires that mistakes lead to.
    private static bool Finish(ProblemDraft d, DesignCircuit c, Func<DesignChoice, double> value)
    {
        foreach ((Mistake mistake, DesignChoice choice) in c.WrongChoices())
        {
            d.Wrong(mistake, value(choice));
        }

        return true;
    }

    private static DrawnGiven U(DesignCircuit c) => c.U;
}
