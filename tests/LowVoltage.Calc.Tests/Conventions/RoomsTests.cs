using Mono.Cecil;
using Mono.Cecil.Cil;

namespace LowVoltage.Calc.Tests.Conventions;

/// <summary>The rooms (folder = namespace) and the direction of the arrows between them, read from the compiled assembly.</summary>
public class RoomsTests
{
    private const string Root = "LowVoltage.Calc";

    private static readonly string[] Ground = ["Quantities", "References", "Working", "Numerics"];

    // What each room may use beside itself and the ground floor.
    private static readonly Dictionary<string, string[]> Allowed = new(StringComparer.Ordinal)
    {
        ["Quantities"] = [],
        ["References"] = [],
        ["Numerics"] = [],
        ["Working"] = ["References"],
        ["Conductors"] = [],
        ["Circuits"] = ["Conductors"],
        ["Networks"] = ["Conductors", "Circuits"],
        // A basis of rating may be a heat balance.
        ["Ampacity"] = ["Conductors", "Heating", "Circuits"],
        ["Heating"] = ["Conductors"],
        ["Protection"] = ["Conductors", "Heating"],
        ["Checks"] = ["Conductors", "Circuits", "Networks", "Ampacity", "Heating", "Protection"],
        // The root holds what a caller meets first; it and Design are one floor.
        ["Design"] = ["Conductors", "Circuits", "Networks", "Ampacity", "Heating", "Protection", "Checks", ""],
        [""] = ["Conductors", "Circuits", "Networks", "Ampacity", "Heating", "Protection", "Checks", "Design"],
        ["Harnesses"] = ["Conductors", "Circuits", "Networks", "Ampacity", "Heating", "Protection", "Checks", "Design", "", "Harnesses.Sizing"],
        // One floor with its room: it sizes what that room verifies.
        ["Harnesses.Sizing"] = ["Conductors", "Circuits", "Ampacity", "Protection", "Checks", "Harnesses", ""],
        ["Documents"] = ["Conductors", "Circuits", "Ampacity", "Heating", "Protection", "Checks", "Design", "Harnesses", ""],
        ["Bulk"] = ["Conductors", "Heating"],
        ["Teaching"] = ["Conductors", "Circuits", "Networks", "Ampacity", "Heating", "Protection", "Checks", "Design", ""],
    };

    [Fact]
    public void Rooms_UseOnlyTheRoomsAboveThem()
    {
        List<string> wrong = [];
        foreach (TypeDefinition type in OwnTypes())
        {
            string room = RoomOf(type)!;
            foreach (string used in TypesUsedBy(type).Select(RoomOf).OfType<string>().Distinct(StringComparer.Ordinal))
            {
                if (used != room && !MayUse(room, used))
                {
                    wrong.Add($"{type.FullName} in {Shown(room)} uses {Shown(used)}");
                }
            }
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public void Rooms_AreTheOnesOfTheDesign() =>
        Assert.All(OwnTypes(), type => Assert.Contains(RoomOf(type)!, Allowed.Keys));

    [Fact]
    public void Numerics_IsInternal() =>
        Assert.All(OwnTypes().Where(t => RoomOf(t) == "Numerics"), type => Assert.True(type.IsNotPublic || type.IsNested, type.FullName));

    [Fact]
    public void Library_DependsOnUnitsNetAndMathNetOnly()
    {
        using AssemblyDefinition assembly = Read();
        string[] foreign = [.. assembly.MainModule.AssemblyReferences.Select(r => r.Name)
            .Where(n => !n.StartsWith("System", StringComparison.Ordinal) && n is not "UnitsNet" and not "MathNet.Numerics" and not "netstandard")];
        Assert.Empty(foreign);

        // What the package depends on, it uses.
        Assert.All(["UnitsNet", "MathNet.Numerics"], name => Assert.Contains(assembly.MainModule.AssemblyReferences, reference => reference.Name == name));
    }

    private static bool MayUse(string room, string used) =>
        Allowed[room].Contains(used, StringComparer.Ordinal)
        || (Ground.Contains(used, StringComparer.Ordinal) && (used == "Quantities" ? room is not ("Numerics" or "References") : true)
            && !Ground.Contains(room, StringComparer.Ordinal));

    private static string Shown(string room) => room.Length == 0 ? "the root" : room;

    private static string? RoomOf(TypeReference type)
    {
        TypeReference outer = type;
        while (outer.DeclaringType is not null)
        {
            outer = outer.DeclaringType;
        }

        string name = outer.Namespace ?? "";
        return name == Root ? "" : name.StartsWith(Root + ".", StringComparison.Ordinal) ? name[(Root.Length + 1)..] : null;
    }

    private static AssemblyDefinition Read() => 
        AssemblyDefinition.ReadAssembly(typeof(Calc.Conductors.Conductor).Assembly.Location, new ReaderParameters { InMemory = true });

    private static IEnumerable<TypeDefinition> OwnTypes()
    {
        AssemblyDefinition assembly = Read();
        return [.. assembly.MainModule.GetTypes().Where(t => RoomOf(t) is not null)];
    }

    private static List<TypeReference> TypesUsedBy(TypeDefinition type)
    {
        List<TypeReference> seen = [];
        void See(TypeReference? t)
        {
            switch (t)
            {
                case null:
                    break;
                case GenericInstanceType generic:
                    seen.Add(generic.ElementType);
                    foreach (TypeReference argument in generic.GenericArguments)
                    {
                        See(argument);
                    }

                    break;
                case TypeSpecification specification:
                    See(specification.ElementType);
                    break;
                case GenericParameter:
                    break;
                default:
                    seen.Add(t);
                    break;
            }
        }

        See(type.BaseType);
        foreach (InterfaceImplementation i in type.Interfaces)
        {
            See(i.InterfaceType);
        }

        foreach (FieldDefinition field in type.Fields)
        {
            See(field.FieldType);
        }

        foreach (MethodDefinition method in type.Methods)
        {
            See(method.ReturnType);
            foreach (ParameterDefinition parameter in method.Parameters)
            {
                See(parameter.ParameterType);
            }

            if (!method.HasBody)
            {
                continue;
            }

            foreach (VariableDefinition variable in method.Body.Variables)
            {
                See(variable.VariableType);
            }

            foreach (Instruction instruction in method.Body.Instructions)
            {
                switch (instruction.Operand)
                {
                    case TypeReference t:
                        See(t);
                        break;
                    case FieldReference f:
                        See(f.DeclaringType);
                        break;
                    case MethodReference m:
                        See(m.DeclaringType);
                        break;
                }
            }
        }

        return seen;
    }
}
