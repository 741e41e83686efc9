namespace LowVoltage.Calc.Networks;

/// <summary>The laws I(U) that the solver knows: U across the element, I from its positive to its negative end inside it.</summary>
internal enum ElementLaw : byte
{
    /// <summary>(U − E)·G: a resistance with E = 0, a battery with its electromotive force. A = E, B = G.</summary>
    Line,

    /// <summary>U = A·I + B·I³: a wire that its rated current warms.</summary>
    Cubic,

    /// <summary>U = R·I/(1 − k·I²): a wire that its own loss warms. A = R, B = k.</summary>
    Runaway,

    /// <summary>Gives up to B amperes at A volts behind C ohms; never takes any.</summary>
    Supply,

    /// <summary>Gives A − B·(exp(U/C) − 1); never takes any.</summary>
    Solar,

    /// <summary>A amperes, whatever the voltage and its sign.</summary>
    Drawn,

    /// <summary>A·tanh(U/B): A amperes from a few B on, and nothing without voltage.</summary>
    Steady,

    /// <summary>A watts from B volts on; below, off, or the resistance that takes A watts at B volts (see <see cref="NetworkSolver"/>). C is its voltage of reference.</summary>
    Power,

    /// <summary>A·(U/B)^0.55, a resistance below a thousandth of B.</summary>
    Lamp,

    /// <summary>A law of the caller's; in the first, linear step A + B·U.</summary>
    Other,
}
