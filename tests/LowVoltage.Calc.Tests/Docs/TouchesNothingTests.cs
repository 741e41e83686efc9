using Mono.Cecil;
using Mono.Cecil.Cil;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>The statement of docs/security.md, read from the compiled assembly: no files, network, clock, environment,
/// randomness of its own, reflection or native code; no static that changes.</summary>
public class TouchesNothingTests
{
    private static readonly string[] Namespaces =
        ["System.Net", "System.Diagnostics.Process", "System.Reflection", "System.Runtime.InteropServices.Marshal", "Microsoft.Win32", "System.Security", "System.Timers"];

    private static readonly string[] Types =
    [
        "System.IO.File", "System.IO.FileInfo", "System.IO.FileStream", "System.IO.Directory", "System.IO.DirectoryInfo", "System.IO.Path", "System.IO.StreamReader", "System.IO.StreamWriter",
        "System.DateTime", "System.DateTimeOffset", "System.TimeZoneInfo", "System.TimeProvider", "System.Diagnostics.Stopwatch", "System.Console", "System.Activator", "System.AppDomain", "System.AppContext",
        "System.Guid", "System.Environment", "System.Threading.Thread", "System.Threading.Tasks.Task",
    ];

    // Iterators that the compiler writes ask on which thread they run.
    private static readonly string[] Harmless = ["System.Environment::get_CurrentManagedThreadId"];

    [Fact]
    public void Library_CallsNothingOutsideItself()
    {
        using ModuleDefinition module = ModuleDefinition.ReadModule(typeof(CircuitDesigner).Assembly.Location);
        List<string> wrong = [];
        int calls = 0;
        foreach (MethodDefinition method in module.GetTypes().SelectMany(type => type.Methods).Where(method => method.HasBody))
        {
            foreach (MethodReference called in method.Body.Instructions.Select(instruction => instruction.Operand).OfType<MethodReference>())
            {
                calls++;
                if (IsOutside(called))
                {
                    wrong.Add($"{method.FullName} calls {called.FullName}");
                }
            }
        }

        Assert.True(calls > 1000);
        Assert.Empty(wrong);
    }

    [Fact]
    public void Library_CallsNoNativeCode()
    {
        using ModuleDefinition module = ModuleDefinition.ReadModule(typeof(CircuitDesigner).Assembly.Location);
        Assert.Empty(module.ModuleReferences);
        Assert.DoesNotContain(module.GetTypes().SelectMany(type => type.Methods), method => method.IsPInvokeImpl);
    }

    /// <summary>Statics are set once; what the compiler keeps of a lambda (in its own nested types) is no state.</summary>
    [Fact]
    public void Library_HasNoStaticThatChanges()
    {
        using ModuleDefinition module = ModuleDefinition.ReadModule(typeof(CircuitDesigner).Assembly.Location);
        IEnumerable<FieldDefinition> changing = module.GetTypes()
            .SelectMany(type => type.Fields)
            .Where(field => field.IsStatic && !field.IsInitOnly && !field.IsLiteral && !field.DeclaringType.Name.Contains('<', StringComparison.Ordinal));
        Assert.Empty(changing.Select(field => field.FullName));
    }

    private static bool IsOutside(MethodReference called)
    {
        TypeReference type = called.DeclaringType;
        if (type.FullName == "System.Random")
        {
            // With a seed it is arithmetic.
            return called.Name == "get_Shared" || (called.Name == ".ctor" && called.Parameters.Count == 0);
        }

        return !Harmless.Contains($"{type.FullName}::{called.Name}")
            && (Types.Contains(type.FullName) || Namespaces.Any(space => type.FullName == space || type.FullName.StartsWith(space + ".", StringComparison.Ordinal)));
    }
}
