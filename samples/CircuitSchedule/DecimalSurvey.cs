using System.Globalization;

namespace CircuitSchedule;

/// <summary>Which decimal sign a file uses, proven by its cells; with commas between the cells always the point.</summary>
/// <param name="Sign">The sign; either, when the file uses both or proves none.</param>
/// <param name="Note">A mixture is told; null otherwise.</param>
internal sealed record DecimalSurvey(DecimalSign Sign, string? Note)
{
    public static DecimalSurvey Of(string path, FileEncoding encoding, FileStart start, DecimalSign? stated)
    {
        if (stated is not null || start.Separator == ',')
        {
            return new DecimalSurvey(stated ?? DecimalSign.Point, null);
        }

        using RecordReader reader = new(path, encoding, start);
        int comma = 0, point = 0;
        if (reader.TryRead(out Record header))
        {
            int[] numbers = [.. Enumerable.Range(0, header.Cells.Length).Where(place => Column.IsNumber(header.Cells[place]))];
            while ((comma == 0 || point == 0) && reader.TryRead(out Record row))
            {
                Look(row, numbers, ref comma, ref point);
            }
        }

        return (comma, point) switch
        {
            (> 0, > 0) => new DecimalSurvey(DecimalSign.Either, string.Create(
                CultureInfo.InvariantCulture,
                $"{path} has decimal commas (first in line {comma}) and decimal points (first in line {point}). Both are read; a number such as 1,500 or 1.500 is refused.")),
            (> 0, _) => new DecimalSurvey(DecimalSign.Comma, null),
            (_, > 0) => new DecimalSurvey(DecimalSign.Point, null),
            _ => new DecimalSurvey(DecimalSign.Either, null),
        };
    }

    private static void Look(Record row, int[] numbers, ref int comma, ref int point)
    {
        foreach (int place in numbers)
        {
            DecimalSign? proof = place < row.Cells.Length ? NumberText.Proof(row.Cells[place]) : null;
            comma = proof == DecimalSign.Comma && comma == 0 ? row.Line : comma;
            point = proof == DecimalSign.Point && point == 0 ? row.Line : point;
        }
    }
}
