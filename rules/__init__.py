"""The trade: units, tubes, bends, materials, tooling, and the rules that judge a request."""
