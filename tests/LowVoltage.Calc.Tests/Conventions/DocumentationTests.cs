using System.Xml.Linq;
using Mono.Cecil;
using Mono.Cecil.Rocks;

namespace LowVoltage.Calc.Tests.Conventions;

/// <summary>Every public member says what it answers, and every parameter of it what it takes.</summary>
public class DocumentationTests
{
    private static readonly string Library = typeof(Calc.Conductors.Conductor).Assembly.Location;

    [Fact]
    public void PublicMembers_HaveASummary()
    {
        Dictionary<string, XElement> documented = Documentation();
        string[] missing = [.. PublicMembers().Select(DocCommentId.GetDocCommentId)
            .Where(id => !documented.TryGetValue(id, out XElement? member) || !HasText(member, "summary"))];
        Assert.Empty(missing);
    }

    [Fact]
    public void PublicMethods_DocumentEveryParameter()
    {
        Dictionary<string, XElement> documented = Documentation();
        List<string> missing = [];
        foreach (MethodDefinition method in PublicMembers().OfType<MethodDefinition>().Where(m => !IsOperatorOrOverride(m)))
        {
            XElement member = documented[DocCommentId.GetDocCommentId(method)];
            if (member.Element("inheritdoc") is not null)
            {
                continue;
            }

            missing.AddRange(method.Parameters
                .Where(p => !member.Elements("param").Any(e => (string?)e.Attribute("name") == p.Name && e.Value.Trim().Length > 0))
                .Select(p => $"{method.FullName}: {p.Name}"));
        }

        Assert.Empty(missing);
    }

    // Operators of comparison and conversion are explained by their names; the twin method carries the parameters.
    private static bool IsOperatorOrOverride(MethodDefinition method) =>
        method.Name.StartsWith("op_", StringComparison.Ordinal) || (method.IsVirtual && method.IsReuseSlot);

    private static bool HasText(XElement member, string name) =>
        member.Element("inheritdoc") is not null || member.Element(name)?.Value.Trim().Length > 0 || member.Element(name)?.HasElements == true;

    private static Dictionary<string, XElement> Documentation() =>
        XDocument.Load(Path.ChangeExtension(Library, ".xml")).Descendants("member")
            .ToDictionary(m => (string)m.Attribute("name")!, m => m, StringComparer.Ordinal);

    private static List<IMemberDefinition> PublicMembers()
    {
        AssemblyDefinition assembly = AssemblyDefinition.ReadAssembly(Library);
        List<IMemberDefinition> members = [];
        foreach (TypeDefinition type in assembly.MainModule.GetTypes().Where(IsVisible))
        {
            members.Add(type);
            members.AddRange(type.Methods.Where(m => (m.IsPublic || m.IsFamily) && !m.IsGetter && !m.IsSetter && !IsImplied(m)));
            members.AddRange(type.Properties.Where(p => p.GetMethod?.IsPublic == true));
            members.AddRange(type.Fields.Where(f => f.IsPublic && !f.IsSpecialName));
        }

        return members;
    }

    private static bool IsVisible(TypeDefinition type) => type.IsNested ? type.IsNestedPublic && IsVisible(type.DeclaringType) : type.IsPublic;

    // A constructor that the compiler adds has nothing to document.
    private static bool IsImplied(MethodDefinition method) => method.IsConstructor && !method.HasParameters;
}
