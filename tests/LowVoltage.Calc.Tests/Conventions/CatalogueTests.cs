using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Conventions;

/// <summary>Everything that the library carries, tables, series, rules, materials, with its sources, as text: a shipped value or a source never changes unnoticed.</summary>
/// <remarks>
/// Whether the values are right is tested against published tables in Validation. To renew after a change that is meant: run with the environment variable
/// <c>APPROVE_CATALOGUE</c> set to 1, read the difference, commit it, and note it in the changelog under "Reference data".
/// </remarks>
public class CatalogueTests
{
    private const int Depth = 4;

    [Fact]
    public void WhatIsCarried_IsWhatWasReviewed()
    {
        StringBuilder all = new();
        foreach (Type type in typeof(Reference).Assembly.GetExportedTypes().OrderBy(type => type.FullName, StringComparer.Ordinal))
        {
            foreach (PropertyInfo property in type.GetProperties(BindingFlags.Public | BindingFlags.Static).OrderBy(p => p.Name, StringComparer.Ordinal))
            {
                all.Append("## ").Append(type.FullName!["LowVoltage.Calc.".Length..]).Append('.').Append(property.Name).Append('\n');
                Write(all, property.GetValue(null), 1);
            }
        }

        string written = all.ToString();
        if (Environment.GetEnvironmentVariable("APPROVE_CATALOGUE") == "1")
        {
            File.WriteAllText(Path.Combine(Path.GetDirectoryName(Here())!, "Approved", "catalogue.txt"), written);
        }

        using Stream stream = typeof(CatalogueTests).Assembly.GetManifestResourceStream("Approved.catalogue.txt")
            ?? throw new InvalidOperationException("There is no approved catalogue.");
        using StreamReader reader = new(stream);
        Assert.Equal(reader.ReadToEnd(), written);
    }

    private static void Write(StringBuilder all, object? value, int level)
    {
        string? plain = value switch
        {
            null => "none",
            string text => text,
            double number => number.ToString("G12", CultureInfo.InvariantCulture),
            Enum or bool or int => Convert.ToString(value, CultureInfo.InvariantCulture),
            IQuantity quantity => ((double)quantity.Value).ToString("G12", CultureInfo.InvariantCulture) + " " + quantity.Unit,
            Reference source => source + " | " + source.Note,
            _ => null,
        };
        if (plain is not null)
        {
            all.Append(' ', all[^1] == ':' ? 1 : level).Append(plain).Append('\n');
        }
        else if (value is IEnumerable items)
        {
            Break(all);
            foreach (object item in items)
            {
                Write(all, item, level + 1);
            }
        }
        else
        {
            Break(all);
            all.Append(' ', level).Append(Convert.ToString(value, CultureInfo.InvariantCulture)).Append('\n');
            if (level < Depth)
            {
                foreach (PropertyInfo property in value!.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
                    .Where(p => p.GetIndexParameters().Length == 0).OrderBy(p => p.Name, StringComparer.Ordinal))
                {
                    all.Append(' ', level).Append(property.Name).Append(':');
                    Write(all, property.GetValue(value), level + 1);
                }
            }
        }
    }

    private static void Break(StringBuilder all)
    {
        if (all[^1] == ':')
        {
            all.Append('\n');
        }
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
