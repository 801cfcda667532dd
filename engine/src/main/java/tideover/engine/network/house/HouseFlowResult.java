package tideover.engine.network.house;

/** What the flow of one state came to. */
public sealed interface HouseFlowResult permits HouseFlow, Unsolved {}
