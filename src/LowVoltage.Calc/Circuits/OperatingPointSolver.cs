using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Circuits;

/// <summary>Joins source, path and load to the loop, and takes its answer apart again.</summary>
internal static class OperatingPointSolver
{
    internal static OperatingPoint Solve(
        Source source, CircuitPath path, Load load, ConductorTemperature temperature, SupplyLevel level, LoadState state)
    {
        PathTemperature model = new(path, temperature);
        if (state == LoadState.Peak && model.DependsOnCurrent)
        {
            // A peak is over before the conductor warms up: the conductor is as warm as in steady running.
            LoopPoint running = Run(source, path, load, temperature, model, level, LoadState.Running);
            if (!running.Exists)
            {
                return Finish(source, path, load, temperature, model, level, state, running);
            }

            model = new PathTemperature(path, temperature, running.HeatingAmperes);
        }

        return Finish(source, path, load, temperature, model, level, state, Run(source, path, load, temperature, model, level, state));
    }

    /// <summary>Resistance of a shared return, Ω. Its temperature follows all its users' current, so a self-heating one is counted at its rated temperature.</summary>
    internal static double SharedOhms(CircuitPath path, ConductorTemperature temperature)
    {
        double ohms = path.Return.Kind == ReturnKind.SharedResistance ? path.Return.Ohms : 0;
        if (path.Return.Kind == ReturnKind.SharedSegments)
        {
            foreach (Segment segment in path.BackArray)
            {
                ohms += segment.OhmsAt(SharedCelsius(segment, temperature));
            }
        }

        return ohms;
    }

    private static double SharedCelsius(Segment segment, ConductorTemperature temperature)
    {
        ConductorTemperature own = segment.Temperature ?? temperature;
        return own.AmbientCelsius + own.RiseKelvins;
    }

    private static LoopPoint Run(
        Source source, CircuitPath path, Load load, ConductorTemperature temperature, in PathTemperature model, SupplyLevel level, LoadState state)
    {
        SourceNumbers numbers = source.Numbers;
        double shared = SharedOhms(path, temperature);
        double stated = path.Return.Kind == ReturnKind.SharedSegments ? shared : 0;
        return LoopKernel.Solve(
            numbers.VoltsAt(level) - (shared * path.Return.OtherAmperes),
            numbers.OhmsAt(level) + path.FixedOhms + stated + model.Ohms,
            model.OhmsPerSquareAmpere,
            load,
            state,
            numbers.HeldAmperes);
    }

    private static OperatingPoint Finish(
        Source source,
        CircuitPath path,
        Load load,
        ConductorTemperature temperature,
        in PathTemperature model,
        SupplyLevel level,
        LoadState state,
        in LoopPoint point)
    {
        SourceNumbers numbers = source.Numbers;
        double openVolts = numbers.VoltsAt(level);
        OperatingPoint none(NoOperatingPoint reason, double? watts, string why) => None(reason, watts, why, source, path, load, temperature, level, state);
        if (!point.Exists)
        {
            return none(point.Reason, point.LargestWatts, Explain(point));
        }

        if (numbers.Action == LimitAction.Disconnects && point.Amperes > numbers.LimitAmperes)
        {
            // As warm as what it would draw makes it: Kirchhoff gives the resistance.
            double left = openVolts - (path.Return.OtherAmperes * SharedOhms(path, temperature));
            double most = numbers.LimitAmperes * (left - (numbers.LimitAmperes * (left - point.Volts) / point.Amperes));
            return none(
                NoOperatingPoint.SourceDisconnects,
                Math.Max(0, most),
                $"The circuit would draw {Accept.Text(point.Amperes)} A and the source disconnects above {Accept.Text(numbers.LimitAmperes)} A.");
        }

        if (numbers.Collapses(point.Limited))
        {
            return none(
                NoOperatingPoint.SourceLimit, numbers.LimitAmperes * point.Volts,
                $"The load takes more than the {Accept.Text(numbers.LimitAmperes)} A that one of the sources in series holds: the others would push its current through that one backwards.");
        }

        if (!TryDrop(path, temperature, model, point, out double drop, out Segment? melts))
        {
            return none(
                NoOperatingPoint.ConductorMelts,
                null,
                $"{melts} would pass the melting point of its metal at {Accept.Text(point.Amperes)} A.");
        }

        return new OperatingPoint
        {
            Reason = NoOperatingPoint.None,
            Explanation = "",
            Level = level,
            State = state,
            OpenVolts = openVolts,
            Amperes = point.Amperes,
            HeatingAmperes = point.HeatingAmperes,
            LoadVolts = point.Volts,
            DropVolts = drop,
            CurrentLimitReached = point.Limited,
            FrozenAmperes = model.FrozenAmperes,
            Supply = source,
            Path = path,
            Fed = load,
            Warmth = temperature,
        };
    }

    private static OperatingPoint None(
        NoOperatingPoint reason, double? watts, string why, Source source, CircuitPath path, Load load, ConductorTemperature temperature, SupplyLevel level, LoadState state) => new()
        {
            Reason = reason,
            LargestWatts = watts ?? double.NaN,
            Explanation = why,
            Level = level,
            State = state,
            OpenVolts = source.Numbers.VoltsAt(level),
            Supply = source,
            Path = path,
            Fed = load,
            Warmth = temperature,
        };

    // The drop of the whole path, part by part in the order in which they stand; false where a conductor would melt.
    private static bool TryDrop(CircuitPath path, ConductorTemperature temperature, in PathTemperature model, in LoopPoint point, out double volts, out Segment? melts)
    {
        volts = 0;
        melts = null;
        double i = point.Amperes, heat = point.HeatingAmperes, other = path.Return.OtherAmperes;
        foreach (Segment segment in path.FeedArray)
        {
            volts += Dropped(segment, model.CelsiusOf(segment, heat), i, ref melts);
        }

        foreach (Joint joint in path.FeedJointArray)
        {
            volts += joint.Ohms * i;
        }

        foreach (Segment segment in path.BackArray)
        {
            volts += path.Return.IsShared
                ? Dropped(segment, SharedCelsius(segment, temperature), i + other, ref melts)
                : Dropped(segment, model.CelsiusOf(segment, heat), i, ref melts);
        }

        foreach (Joint joint in path.ReturnJointArray)
        {
            volts += joint.Ohms * i;
        }

        volts += path.Return.Kind is ReturnKind.Chassis or ReturnKind.SharedResistance ? path.Return.Ohms * (i + other) : 0;
        return melts is null;
    }

    private static double Dropped(Segment segment, double celsius, double amperes, ref Segment? melts)
    {
        melts ??= celsius >= segment.Conductor.Material.MeltingPointCelsius ? segment : null;
        return segment.OhmsAt(celsius) * amperes;
    }

    /// <summary>Every part of the path of a point that exists, from the source to the load and back.</summary>
    internal static PathElement[] Elements(OperatingPoint point) =>
        [.. Elements(point.Path, point.Warmth, new PathTemperature(point.Path, point.Warmth, point.FrozenAmperes), point.Amperes, point.HeatingAmperes)];

    private static IEnumerable<PathElement> Elements(CircuitPath path, ConductorTemperature temperature, PathTemperature model, double i, double heat)
    {
        double other = path.Return.OtherAmperes;
        PathElement wire(Segment segment, PathElementKind kind, double celsius, double others) => new()
        {
            Name = segment.ToString(), Kind = kind, Segment = segment, Celsius = celsius, Ohms = segment.OhmsAt(celsius), Amperes = i, OtherAmperes = others,
        };
        foreach (Segment segment in path.FeedArray)
        {
            yield return wire(segment, PathElementKind.FeedSegment, model.CelsiusOf(segment, heat), 0);
        }

        foreach (Joint joint in path.FeedJoints)
        {
            yield return new() { Name = joint.Name, Kind = PathElementKind.FeedJoint, Ohms = joint.Ohms, Amperes = i };
        }

        foreach (Segment segment in path.BackArray)
        {
            yield return path.Return.IsShared
                ? wire(segment, PathElementKind.ReturnSegment, SharedCelsius(segment, temperature), other)
                : wire(segment, PathElementKind.ReturnSegment, model.CelsiusOf(segment, heat), 0);
        }

        foreach (Joint joint in path.ReturnJoints)
        {
            yield return new() { Name = joint.Name, Kind = PathElementKind.ReturnJoint, Ohms = joint.Ohms, Amperes = i };
        }

        if (path.Return.Kind is ReturnKind.Chassis or ReturnKind.SharedResistance)
        {
            string name = path.Return.Kind == ReturnKind.Chassis ? "chassis return" : "shared return";
            yield return new() { Name = name, Kind = PathElementKind.ReturnResistance, Ohms = path.Return.Ohms, Amperes = i, OtherAmperes = other };
        }
    }

    private static string Explain(in LoopPoint point)
    {
        string most = $"at most {Accept.Text(point.LargestWatts)} W can reach the load";
        return point.Reason switch
        {
            NoOperatingPoint.PowerOutOfReach => $"The load needs more power than can come through this resistance: {most}.",
            NoOperatingPoint.SourceLimit => $"The load needs more than the current limit of the source: {most}.",
            _ => $"The load's current would drop more than the whole voltage: {most}.",
        };
    }

    /// <summary>What an operating point assumes, a remark on its load included.</summary>
    internal static string[] Assumed(
        Source source, CircuitPath path, ConductorTemperature temperature, LoadState state, string? remark)
    {
        List<string> lines = [.. source.Assumptions];
        lines.Add(temperature.DependsOnCurrent
            ? $"Conductors {Accept.Text(temperature.AmbientCelsius)} °C with no current and {Accept.Text(temperature.AmbientCelsius + temperature.RiseKelvins)} °C at {Accept.Text(temperature.RatedAmperes)} A each, the rise with the square of the current."
            : $"Conductors at {Accept.Text(temperature.AmbientCelsius)} °C.");
        if (path.Return.Kind == ReturnKind.Stated)
        {
            lines[lines.Count - 1] = $"The resistance of the way out and back was stated whole, {Accept.Text(path.FixedOhms * 1000)} mΩ, whatever its temperature.";
            return remark is null ? [.. lines] : [.. lines, remark];
        }

        if (temperature.DependsOnCurrent && state == LoadState.Peak)
        {
            lines.Add("A peak is over before the conductors warm up: they are as warm as in steady running.");
        }

        lines.Add($"Feed {Accept.Text(path.FeedArray.Sum(s => s.Meters))} m; return {DescribeReturn(path)}. Nothing is doubled.");
        if (path.Return.IsShared)
        {
            lines.Add($"The others' {Accept.Text(path.Return.OtherAmperes)} A in the shared return add to the drop"
                + (temperature.DependsOnCurrent && path.Return.Kind == ReturnKind.SharedSegments ? "; its wires are counted at their rated temperature." : "."));
        }

        if (remark is not null)
        {
            lines.Add(remark);
        }

        return [.. lines];
    }

    private static string DescribeReturn(CircuitPath path) => path.Return.Kind switch
    {
        ReturnKind.Chassis => $"through a chassis of {Accept.Text(path.Return.Ohms * 1000)} mΩ",
        ReturnKind.SharedResistance => $"through a shared {Accept.Text(path.Return.Ohms * 1000)} mΩ",
        _ => $"{Accept.Text(path.BackArray.Sum(s => s.Meters))} m",
    };
}
