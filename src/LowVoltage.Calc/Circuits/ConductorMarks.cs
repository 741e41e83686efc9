using System.Globalization;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Circuits;

/// <summary>What tells the conductors of a worked solution apart: nothing behind the letters of the first, then 2, 3 …</summary>
internal sealed class ConductorMarks
{
    private readonly List<Conductor> known = [];

    internal IReadOnlyList<Conductor> All => known;

    internal string Of(Conductor conductor)
    {
        int at = known.IndexOf(conductor);
        if (at < 0)
        {
            at = known.Count;
            known.Add(conductor);
        }

        return at == 0 ? "" : (at + 1).ToString(CultureInfo.InvariantCulture);
    }
}
