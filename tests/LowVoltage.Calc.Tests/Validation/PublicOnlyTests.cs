using LowVoltage.Calc.Tests.Networks;
using Mono.Cecil;
using Mono.Cecil.Cil;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>Published problems are solved by what every caller can call: read from the compiled tests, helpers included.</summary>
public class PublicOnlyTests
{
    private static readonly AssemblyDefinition Library = AssemblyDefinition.ReadAssembly(typeof(Calc.Conductors.Conductor).Assembly.Location);
    private static readonly AssemblyDefinition Tests = AssemblyDefinition.ReadAssembly(typeof(PublicOnlyTests).Assembly.Location);

    public static TheoryData<Type> Solvers => [typeof(DcCircuitProblemsTests), typeof(WireCircuitProblemsTests), typeof(WireProblemsConductorsTests), typeof(ThermalProblemsTests), typeof(NetworkProblem)];

    [Theory, MemberData(nameof(Solvers))]
    public void PublishedProblems_AreSolvedByPublicMembersAlone(Type solver)
    {
        HashSet<string> called = [], hidden = [];
        Walk(Tests.MainModule.GetType(solver.FullName), called, hidden);
        Assert.Empty(hidden);
        Assert.True(called.Count >= 5, $"{solver.Name} calls {called.Count} members of the library.");
    }

    // The reader must see what it forbids: this test class of the kernels does call internals.
    [Fact]
    public void Walk_OfATestOfKernels_FindsInternals()
    {
        HashSet<string> called = [], hidden = [];
        Walk(Tests.MainModule.GetType(typeof(Circuits.LoopKernelTests).FullName), called, hidden);
        Assert.NotEmpty(hidden);
    }

    [Fact]
    public void Problems_Solved_AreCounted()
    {
        int circuits = DcCircuitProblemsTests.Ids.Count, wires = WireCircuitProblemsTests.Ids.Count + WireProblemsConductorsTests.Ids().Count, heat = ThermalProblemsTests.Solved().Count;
        Assert.Equal((46, 66, 18), (circuits, wires, heat));
    }

    private static void Walk(TypeDefinition start, HashSet<string> called, HashSet<string> hidden)
    {
        HashSet<MethodDefinition> seen = [];
        Stack<MethodDefinition> open = new(WithNested(start).SelectMany(type => type.Methods));
        while (open.TryPop(out MethodDefinition? method))
        {
            if (!seen.Add(method) || !method.HasBody)
            {
                continue;
            }

            foreach (Instruction instruction in method.Body.Instructions)
            {
                foreach (MemberReference used in Members(instruction.Operand))
                {
                    Sort(used, open, called, hidden);
                }
            }
        }
    }

    private static void Sort(MemberReference used, Stack<MethodDefinition> open, HashSet<string> called, HashSet<string> hidden)
    {
        TypeReference holder = ((used as TypeReference) ?? used.DeclaringType).GetElementType();
        if (holder is GenericParameter || used is MethodReference { DeclaringType: ArrayType })
        {
            return;
        }

        string scope = holder.Scope.Name;
        if (scope.StartsWith(Library.Name.Name + ".Tests", StringComparison.Ordinal))
        {
            foreach (MethodDefinition next in holder.Resolve().Methods.Where(m => m.IsConstructor && m.IsStatic).Concat(used is MethodReference call ? [call.Resolve()] : []))
            {
                open.Push(next);
            }
        }
        else if (scope == Library.Name.Name || scope == Library.Name.Name + ".dll")
        {
            called.Add(used.FullName);
            if (!IsPublic(used))
            {
                hidden.Add(used.FullName);
            }
        }
    }

    private static IEnumerable<MemberReference> Members(object? operand) => operand switch
    {
        GenericInstanceMethod generic => [generic.ElementMethod, .. generic.GenericArguments],
        MemberReference member => [member],
        _ => [],
    };

    private static bool IsPublic(MemberReference member) => member switch
    {
        TypeReference type => IsVisible(type.GetElementType().Resolve()),
        MethodReference method => method.Resolve() is { IsPublic: true } found && IsVisible(found.DeclaringType),
        FieldReference field => field.Resolve() is { IsPublic: true } found && IsVisible(found.DeclaringType),
        _ => false,
    };

    private static bool IsVisible(TypeDefinition? type) => type is not null && (type.IsNested ? type.IsNestedPublic && IsVisible(type.DeclaringType) : type.IsPublic);

    private static IEnumerable<TypeDefinition> WithNested(TypeDefinition type) => type.NestedTypes.SelectMany(WithNested).Prepend(type);
}
