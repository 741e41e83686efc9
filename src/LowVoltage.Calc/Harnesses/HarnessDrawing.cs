using System.Xml.Linq;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Draws a harness as SVG: the ways out on the left, the loads in the middle, the ways back on the right.</summary>
/// <remarks>
/// <para>A layered tree on either side; what closes a ring or joins sources is a dashed line. The width of a line follows the section, its colour temperature or drop (with a legend, and a number
/// at each wire, so that it reads in grey too). Nodes show their voltage, places named as faulty are marked. Colours follow the reader's light or dark setting and print on white.</para>
/// <para>The file needs nothing else: no script, no font, no picture from elsewhere. The same input gives the same text.</para>
/// </remarks>
public static class HarnessDrawing
{
    /// <summary>Draws a harness without a solution: names and sizes only.</summary>
    /// <param name="harness">The harness.</param>
    /// <param name="faults">Names of parts to be marked; <c>null</c> for none.</param>
    /// <returns>The SVG document.</returns>
    /// <exception cref="ArgumentNullException">The harness is null.</exception>
    public static string Svg(Harness harness, IEnumerable<string>? faults) =>
        Write(new HarnessLayout(harness ?? throw new ArgumentNullException(nameof(harness))), null, DrawingColour.None, faults);

    /// <summary>Draws a harness without a solution: names and sizes only.</summary>
    /// <param name="harness">The harness.</param>
    /// <returns>The SVG document.</returns>
    /// <exception cref="ArgumentNullException">The harness is null.</exception>
    public static string Svg(Harness harness) => Svg(harness, null);

    /// <summary>Draws a solved harness, its wires coloured by temperature.</summary>
    /// <param name="solution">The solution; where there is none, names and sizes are drawn.</param>
    /// <returns>The SVG document.</returns>
    /// <exception cref="ArgumentNullException">The solution is null.</exception>
    public static string Svg(HarnessSolution solution) => Svg(solution, DrawingColour.Temperature, null);

    /// <summary>Draws a solved harness.</summary>
    /// <param name="solution">The solution; where there is none, names and sizes are drawn.</param>
    /// <param name="colour">What the colour of a wire stands for.</param>
    /// <param name="faults">Names of parts to be marked, such as those of failed checks; <c>null</c> for none.</param>
    /// <returns>The SVG document.</returns>
    /// <exception cref="ArgumentNullException">The solution is null.</exception>
    public static string Svg(HarnessSolution solution, DrawingColour colour, IEnumerable<string>? faults)
    {
        _ = solution ?? throw new ArgumentNullException(nameof(solution));
        return Write(new HarnessLayout(solution.Harness), solution.Exists ? solution.State : null, colour, faults);
    }

    private static string Write(HarnessLayout layout, HarnessState? state, DrawingColour colour, IEnumerable<string>? faults)
    {
        XElement svg = new HarnessPicture(layout, state, colour, [.. faults ?? []]).Draw();
        return svg.ToString(SaveOptions.None).Replace("\r\n", "\n") + "\n";
    }
}
