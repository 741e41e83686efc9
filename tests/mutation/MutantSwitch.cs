using System.Reflection;
using Mono.Cecil;
using Mono.Cecil.Cil;
using Mono.Cecil.Rocks;
using FieldAttributes = Mono.Cecil.FieldAttributes;
using MethodBody = Mono.Cecil.Cil.MethodBody;

namespace Mutation;

/// <summary>The switch that turns one mutant on, rewritten so that it also notes which mutants were passed.</summary>
internal sealed class MutantSwitch
{
    private const int Most = 100_000;
    private readonly FieldInfo active;
    private readonly FieldInfo passed;

    internal MutantSwitch(string tests)
    {
        Assembly library = Assembly.LoadFrom(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(tests))!, "LowVoltage.Calc.dll"));
        Type control = library.GetTypes().Single(type => type.Name == "MutantControl");
        active = control.GetField("Chosen", BindingFlags.Static | BindingFlags.Public)!;
        passed = control.GetField("Passed", BindingFlags.Static | BindingFlags.Public)!;
        passed.SetValue(null, new bool[Most]);
        Active = -1;
    }

    internal int Active
    {
        set => active.SetValue(null, value);
    }

    /// <summary>The mutants passed since the last call.</summary>
    internal int[] Take()
    {
        bool[] noted = (bool[])passed.GetValue(null)!;
        int[] found = [.. Enumerable.Range(0, Most).Where(i => noted[i])];
        Array.Clear(noted);
        return found;
    }

    /// <summary>IsActive(id) becomes: Passed[id] = true; return id == Chosen.</summary>
    internal static void Install(string library)
    {
        using AssemblyDefinition assembly = AssemblyDefinition.ReadAssembly(library, new ReaderParameters { ReadWrite = true, InMemory = true });
        ModuleDefinition module = assembly.MainModule;
        TypeDefinition control = module.GetAllTypes().Single(type => type.Name == "MutantControl");
        control.IsPublic = true;
        FieldDefinition chosen = new("Chosen", FieldAttributes.Public | FieldAttributes.Static, module.TypeSystem.Int32);
        FieldDefinition passed = new("Passed", FieldAttributes.Public | FieldAttributes.Static, new ArrayType(module.TypeSystem.Boolean));
        control.Fields.Add(chosen);
        control.Fields.Add(passed);
        MethodDefinition cctor = control.Methods.FirstOrDefault(m => m.Name == ".cctor")!;
        if (cctor is not null)
        {
            control.Methods.Remove(cctor);
        }

        MethodBody body = control.Methods.Single(method => method.Name == "IsActive").Body;
        body.Instructions.Clear();
        body.ExceptionHandlers.Clear();
        body.Variables.Clear();
        ILProcessor il = body.GetILProcessor();
        il.Emit(OpCodes.Ldsfld, passed);
        il.Emit(OpCodes.Ldarg_0);
        il.Emit(OpCodes.Ldc_I4_1);
        il.Emit(OpCodes.Stelem_I1);
        il.Emit(OpCodes.Ldarg_0);
        il.Emit(OpCodes.Ldsfld, chosen);
        il.Emit(OpCodes.Ceq);
        il.Emit(OpCodes.Ret);
        assembly.Write(library);
    }
}
