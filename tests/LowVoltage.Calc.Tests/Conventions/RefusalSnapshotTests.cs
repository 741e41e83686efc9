using System.Globalization;
using System.Reflection;
using System.Text;
using System.Text.RegularExpressions;

namespace LowVoltage.Calc.Tests.Conventions;

/// <summary>What the public surface says when it refuses, each kind of message once, as text that a person reads when it changes.</summary>
/// <remarks>
/// Below a type stand the messages that no type before it has; a digest stands for all of its messages, member by member, and one for the types that say nothing new.
/// That it refuses what it should is tested with each member. To renew after a change that is meant: <c>bash .ci/approve</c>, read the difference, commit it.
/// </remarks>
public partial class RefusalSnapshotTests
{
    private const int Tries = 60;

    // Two messages that begin with so many equal words are of one kind.
    private const int WordsOfAKind = 5;

    // On .NET 8 and later alone; what a document is refused with is tested in its room.
    private const string Documents = "LowVoltage.Calc.Documents";

    [Fact]
    public void Refusals_AreThoseThatWereReviewed()
    {
        StringBuilder all = new(), others = new();
        HashSet<string> kinds = [];
        foreach (IGrouping<string, (string Name, string[] Said)> type in Members().OrderBy(m => m.Key, StringComparer.Ordinal)
            .Select(m => (m.Key, Said: (string[])[.. Refusals(m.Key, m.Value).Values.Order(StringComparer.Ordinal)])).Where(m => m.Said.Length > 0)
            .GroupBy(m => m.Key.Split('.')[0]))
        {
            string whole = string.Join("\n", type.Select(member => member.Name + "\n" + string.Join("\n", member.Said)));
            string[] news = [.. type.SelectMany(member => member.Said).Where(message => kinds.Add(Kind(message)))];
            if (news.Length == 0)
            {
                others.Append(whole);
                continue;
            }

            all.Append(CultureInfo.InvariantCulture, $"{type.Key}: {ApprovedText.Digest(whole)}\n  ").AppendJoin("\n  ", news).Append('\n');
        }

        all.Append(CultureInfo.InvariantCulture, $"The other types: {ApprovedText.Digest(others.ToString())}\n");

        ApprovedText.Check("refusals.txt", all.ToString());
    }

    // How the sentence begins: the kind of exception and the first words, without what it quotes, numbers with their units, names, and the argument.
    private static string Kind(string message)
    {
        string argument = Argument().Match(message).Groups[1].Value;
        string plain = Named().Replace(Quoted().Replace(message, ""), "$1");
        string[] words = [.. Words().Matches(argument.Length == 0 ? plain : Regex.Replace(plain, $@"\b{argument}\b", "")).Select(word => word.Value).Take(WordsOfAKind)];
        return message.Split(':')[0] + ": " + string.Join(" ", words);
    }

    // Methods, and what is set when an object is made.
    private static Dictionary<string, MethodBase> Members()
    {
        Dictionary<string, MethodBase> members = SurfaceTests.AllMethods().Where(m => m.Value.DeclaringType!.Namespace != Documents).ToDictionary(m => m.Key, m => (MethodBase)m.Value, StringComparer.Ordinal);
        foreach (PropertyInfo property in typeof(CircuitDesigner).Assembly.GetExportedTypes()
            .Where(type => type.Namespace != Documents && SurfaceTests.IsOurs(type) && type.IsClass && !type.IsAbstract)
            .SelectMany(type => type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)))
        {
            if (property.SetMethod is { IsPublic: true } set && property.GetIndexParameters().Length == 0
                && SurfaceTests.CanMake(property.PropertyType) && property.DeclaringType!.GetConstructor(Type.EmptyTypes) is not null)
            {
                members[$"{property.DeclaringType!.Name}.{property.Name}"] = set;
            }
        }

        return members;
    }

    // Messages that differ in their numbers and what they quote alone are one kind: the first stands for all.
    private static Dictionary<string, string> Refusals(string name, MethodBase method)
    {
        Dictionary<string, string> said = new(StringComparer.Ordinal);
        Random random = new(name.Length * 7919);
        for (int i = 0; i < Tries; i++)
        {
            object?[] arguments = [.. method.GetParameters().Select(p => random.Next(20) == 0 && !p.ParameterType.IsValueType ? null : SurfaceTests.Pick(p.ParameterType, random))];

            // What a property is set on is made for it: the objects that the library carries must stay as they are.
            object? self = method.IsStatic ? null : method.IsSpecialName ? Activator.CreateInstance(method.DeclaringType!) : SurfaceTests.Pick(method.DeclaringType!, random);
            try
            {
                method.Invoke(self, arguments);
            }
            catch (TargetInvocationException e)
            {
                // The value found is whatever was drawn; what is accepted is what matters.
                Exception refusal = e.InnerException!;
                string message = refusal.GetType().Name + ": " + Found().Replace(refusal.Message.Split('\n', '\r')[0], "$1 …");
                said.TryAdd(Numbers().Replace(message, "#"), message);
            }
        }

        return said;
    }

    [GeneratedRegex(@"(it was|they were) .*?(?=\.? *(\(Parameter|$))")]
    private static partial Regex Found();

    [GeneratedRegex(@"\(Parameter '(\w+)'\)")]
    private static partial Regex Argument();

    [GeneratedRegex(@"""[^""]*""|\([^()]*\)")]
    private static partial Regex Quoted();

    // What is refused stands before these words and what it is held against behind them: names of tables, sizes, fuses, nodes.
    [GeneratedRegex("(?<=: ).*(is outside|is not a conductor of|is not a size of|need not open at|limits are published for|runs from node|names the reference node).*")]
    private static partial Regex Named();

    [GeneratedRegex(@"(?<![\w/.])[a-z][a-z'-]+(?![\w.])")]
    private static partial Regex Words();

    [GeneratedRegex(@"""[^""]*""|-?\d[\d.]*(E[+-]\d+)?")]
    private static partial Regex Numbers();
}
