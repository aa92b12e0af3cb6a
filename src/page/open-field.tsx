/** Takes an order from a file. */
export const OpenField = ({ onFile }: { readonly onFile: (file: File) => void }) => (
  <div class="field">
    <label for="open">Open an order</label>
    <input
      id="open"
      type="file"
      accept=".yaml,.yml,.json"
      onChange={({ currentTarget: { files } }) => {
        const [file] = files ?? []
        if (file) onFile(file)
      }}
    />
  </div>
)
