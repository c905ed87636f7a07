/** How often what is shown was right when it was simulated: beside where a level is chosen or held. */
export function SimulatedNote({ said }: { readonly said: string | null }) {
  return said === null ? null : <p className="soft small">{said}.</p>;
}
