using Mutation;

// Runs the tests against the mutants of an assembly that dotnet-stryker has instrumented, all in one warm process: some fifty times as fast as one
// test host a mutant. See .ci/mutation.
switch (args)
{
    case ["switch", string library]:
        MutantSwitch.Install(library);
        return 0;
    case ["map", string tests, string map]:
        return CoverageMap.Write(new MutantSwitch(tests), new Suite(tests), map);
    case ["run", string tests, string map, string ids, string results]:
        return MutantRun.All(new MutantSwitch(tests), new Suite(tests), map, File.ReadAllLines(ids).Select(int.Parse), results);
    case ["fresh", string tests, string map, string id, string same, string results]:
        return MutantRun.Fresh(new MutantSwitch(tests), tests, map, int.Parse(id), same, results);
    default:
        Console.Error.WriteLine("switch LIBRARY | map TESTS MAP | run TESTS MAP IDS RESULTS | fresh TESTS MAP ID SAME-FILE-IDS RESULTS");
        return 2;
}
