namespace CircuitPage;

/// <summary>The parts of the description, in their order on the page.</summary>
internal enum FieldGroup
{
    Circuit,
    Supply,
    Load,
    Way,
    Place,
    Upstream,
    Rules,
}
